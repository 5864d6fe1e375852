/** What follows from rechecks and the log of batches: advice, other causes in order, what the log shows. */
import type { BatchFinding } from "../../advice/recheck-types.ts";
import { markOf } from "../kitchen-page.ts";
import { markup } from "../markup.ts";
import type { Markup } from "../markup.ts";
import { whatFollows } from "../wording/recheck-follow.ts";
import type { Follow } from "../wording/recheck-follow.ts";
import type { RecheckView } from "../wording/recheck.ts";
import { separationCauseText } from "../wording/separation-causes.ts";
import { associationTexts, causesTitle, loggedCauses, silenceText } from "../wording/separation.ts";
import { theSetUp } from "../wording/set-up-phrases.ts";

const causesList = (finding: BatchFinding, { writing }: RecheckView): Markup => {
  const title = causesTitle(finding);
  const silence = silenceText(finding, writing);
  const items = loggedCauses(finding).map((cause) => {
    const { what, next } = separationCauseText(cause, writing);
    return markup`<li>${what} <b>${next}</b></li>\n`;
  });
  return markup`${title === null ? null : markup`<p>${title}</p>\n`}${items.length === 0 ? null : markup`<ol class="causes">\n${items}</ol>`}${silence === null ? null : markup`<p class="small">${silence}</p>`}`;
};

const followBlock = (follow: Follow, view: RecheckView): Markup => {
  const { analysis, writing } = view;
  const where = theSetUp(analysis.kitchen, follow.setUp, writing);
  return markup`<p><b>${markOf(analysis, follow.culture)}</b> in ${where}: ${follow.text}</p>
${follow.advice === null ? null : markup`<p class="note">${follow.advice}</p>`}
${follow.finding === null ? null : causesList(follow.finding, view)}
`;
};

export const recheckFollows = (view: RecheckView): Markup | null => {
  const follows = whatFollows(view);
  const log = associationTexts(
    view.recheck,
    (culture) => markOf(view.analysis, culture),
    view.writing,
  );
  if (follows.length + log.length === 0) return null;
  return markup`<h3>What follows</h3>
${follows.map((follow) => followBlock(follow, view))}
${log.map((text) => markup`<p class="small">${text}</p>\n`)}`;
};
