/** Why each set-up holds or misses what it does, and what to do: a card for each culture. */
import type { Verdict } from "../../culture/verdict-types.ts";
import type { SetUpAnalysis } from "../../kitchen-analysis-types.ts";
import { reasonContext, setUpId, testsBehind } from "../kitchen-page.ts";
import type { KitchenPage } from "../kitchen-page.ts";
import { markup } from "../markup.ts";
import type { Markup } from "../markup.ts";
import { roleNames } from "../wording/names.ts";
import { fullSetUpText } from "../wording/set-ups.ts";
import { answerCard } from "./answer-card.ts";
import { adviceItemId } from "./kitchen-advice.ts";
import { testLinks } from "./kitchen-links.ts";

/** What the answers rest on: the tests, and in which place was measured. */
const restsOn = ({ analysis }: KitchenPage, setUp: SetUpAnalysis): Markup => {
  const tests = testsBehind(analysis, setUp);
  const role = setUp.probe === null ? null : roleNames[setUp.probe.series.role];
  const several = setUp.testIds.length > 1 ? "Tests of " : "Test of ";
  return markup`<p class="where small">${tests.length === 0 ? null : markup`${several}${testLinks(analysis, tests)}`}${role === null ? null : `, measured ${role}`}</p>`;
};

/** To the sentence on this appliance and culture, which knows of other settings, containers and appliances. */
const toAdvice = (page: KitchenPage, { setUp }: SetUpAnalysis, verdict: Verdict): Markup | null => {
  const id = adviceItemId(page, setUp.appliance, verdict.requirement.culture);
  if (id === null || verdict.verdict === "holds") return null;
  return markup` <a href="#${id}">What to use instead, or to change</a>`;
};

const block = (page: KitchenPage, setUp: SetUpAnalysis): Markup => {
  const context = reasonContext(page, setUp);
  return markup`
<h3 id="${setUpId(page.analysis, setUp)}">${fullSetUpText(page.analysis.kitchen, setUp.setUp, page.writing)}</h3>
${restsOn(page, setUp)}
<div class="packed">${setUp.verdicts.map((verdict) => answerCard(verdict, context, toAdvice(page, setUp, verdict)))}
</div>`;
};

export const kitchenAnswers = (page: KitchenPage): Markup | null => {
  const setUps = page.analysis.setUps.filter(({ verdicts }) => verdicts.length > 0);
  if (setUps.length === 0) return null;
  return markup`
<section aria-labelledby="why">
<h2 id="why">Why, and what to do</h2>
${setUps.map((setUp) => block(page, setUp))}
</section>`;
};
