/** What to use and what to change: a sentence for each appliance and culture. */
import type { ApplianceAdvice, CultureAdvice } from "../../advice/advice-types.ts";
import type { KitchenPage } from "../kitchen-page.ts";
import { markup } from "../markup.ts";
import type { Markup } from "../markup.ts";
import { answerLooks, answerNames } from "../wording/advice-names.ts";
import { adviceSentence } from "../wording/advice.ts";
import { shortCultureName } from "../wording/cultures.ts";
import { applianceName } from "../wording/set-ups.ts";

/** Where an appliance's advice stands on the page. */
export const adviceId = ({ analysis }: Pick<KitchenPage, "analysis">, appliance: string): string =>
  `advice-${analysis.advice.appliances.findIndex((one) => one.appliance === appliance) + 1}`;

/** Of the sentence on one culture; null where there is none. */
export const adviceItemId = (
  page: Pick<KitchenPage, "analysis">,
  appliance: string,
  culture: string,
): string | null => {
  const advice = page.analysis.advice.appliances.find((one) => one.appliance === appliance);
  const at = advice?.cultures.findIndex((one) => one.culture === culture) ?? -1;
  return at < 0 ? null : `${adviceId(page, appliance)}-${at + 1}`;
};

const cultureNameOf = ({ analysis }: KitchenPage, { culture }: CultureAdvice): string => {
  const asked = analysis.requirements.find((one) => one.culture === culture);
  return asked === undefined ? culture : shortCultureName(asked);
};

/** Advised, and not tested. */
const isPredicted = ({ answer, best }: CultureAdvice): boolean =>
  (answer === "can" || answer === "may") && best !== null && best.basis !== "tested";

const cultureItem = (
  page: KitchenPage,
  appliance: ApplianceAdvice,
  advice: CultureAdvice,
): Markup => {
  const said = adviceSentence(page.analysis, appliance, advice, page.writing);
  const predicted = isPredicted(advice);
  const looks = `${answerLooks[advice.answer]}${predicted ? " predicted" : ""}`;
  return markup`<li id="${adviceItemId(page, appliance.appliance, advice.culture)}" class="${looks}"><span class="mark">${answerNames[advice.answer]}</span> <b>${cultureNameOf(page, advice)}${predicted ? markup` <span class="when">predicted</span>` : null}</b><span class="said">${said}</span></li>\n`;
};

const block = (page: KitchenPage, appliance: ApplianceAdvice): Markup => markup`
<h3 id="${adviceId(page, appliance.appliance)}">${applianceName(page.analysis.kitchen, appliance)}</h3>
<ul class="advice">
${appliance.cultures.map((advice) => cultureItem(page, appliance, advice))}</ul>`;

export const kitchenAdvice = (page: KitchenPage): Markup | null => {
  const { appliances } = page.analysis.advice;
  const asked = appliances.filter(({ cultures }) => cultures.length > 0);
  if (asked.length === 0) return null;
  return markup`
<section aria-labelledby="advice">
<h2 id="advice">What to use, and what to change</h2>
${asked.map((appliance) => block(page, appliance))}
</section>`;
};
