/** Is it still what it was? Rechecked set-ups, tests that are due, and what the batches say. */
import type { KitchenPage } from "../kitchen-page.ts";
import { markup } from "../markup.ts";
import type { Markup } from "../markup.ts";
import { recheckChartsText } from "../wording/recheck-chart.ts";
import { dueText, usualText } from "../wording/recheck-due.ts";
import { loggedTroubleText } from "../wording/recheck-trouble.ts";
import { onlySameSetUps } from "../wording/recheck.ts";
import type { RecheckView } from "../wording/recheck.ts";
import { recheckFollows } from "./kitchen-recheck-follow.ts";
import { recheckedSetUp } from "./kitchen-recheck-set-up.ts";

export const recheckHeading = "Is it still what it was?";

const dueItems = ({ recheck, analysis, writing }: RecheckView): Markup | null => {
  const texts = recheck.due.flatMap((due) => {
    const text = dueText(due, analysis.kitchen, writing);
    return text === null ? [] : [[text, usualText(due) ?? ""].join(" ").trim()];
  });
  if (texts.length === 0) return null;
  return markup`<h3>Tests that are due</h3>
<ul class="due">
${texts.map((text) => markup`<li>${text}</li>\n`)}</ul>`;
};

const trouble = ({ analysis }: KitchenPage): Markup | null => {
  const text = loggedTroubleText(analysis);
  return text === null ? null : markup`<p class="note"><strong>Caution.</strong> ${text}</p>`;
};

export const kitchenRecheck = async (page: KitchenPage): Promise<Markup | null> => {
  const { recheck } = page.analysis.advice;
  const { rechecks, due, findings } = recheck;
  const separated = findings.some((finding) => finding.separated > 0);
  const something = rechecks.length + due.length > 0 || separated;
  if (!something && loggedTroubleText(page.analysis) === null) return null;
  const view: RecheckView = { ...page, recheck };
  const blocks = await Promise.all(
    rechecks.map((one, at) => recheckedSetUp(page, one, `recheck-${at + 1}`)),
  );
  return markup`
<section aria-labelledby="recheck">
<h2 id="recheck">${recheckHeading}</h2>
${trouble(page)}
${blocks}
${rechecks.length === 0 ? null : markup`<p class="small">${onlySameSetUps} ${recheckChartsText}</p>`}
${recheckFollows(view)}
${dueItems(view)}
</section>`;
};
