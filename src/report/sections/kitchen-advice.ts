/** What to change, and what that should do: a sentence for each appliance and culture that the first answers do not settle. */
import type { ApplianceAdvice, CultureAdvice } from "../../advice/advice-types.ts";
import type { KitchenPage } from "../kitchen-page.ts";
import { isSettled, standingOf } from "../kitchen-standing.ts";
import { markup } from "../markup.ts";
import type { Markup } from "../markup.ts";
import { answerLooks, answerNames } from "../wording/advice-names.ts";
import { adviceSentence } from "../wording/advice.ts";
import { shortCultureName } from "../wording/cultures.ts";
import { applianceName } from "../wording/set-ups.ts";
import { kitchenMatch } from "./kitchen-match.ts";

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

/** Without what the first answers say in full. */
const leftToSay = (
  { analysis }: KitchenPage,
  advice: ApplianceAdvice,
): readonly CultureAdvice[] => {
  const appliance = analysis.kitchen.appliances.find(({ id }) => id === advice.appliance);
  if (appliance === undefined) return advice.cultures;
  const standing = standingOf(analysis, appliance);
  return advice.cultures.filter((one) => !isSettled(standing, one));
};

const block = (page: KitchenPage, appliance: ApplianceAdvice): Markup | null => {
  const cultures = leftToSay(page, appliance);
  if (cultures.length === 0) return null;
  return markup`
<h3 id="${adviceId(page, appliance.appliance)}">${applianceName(page.analysis.kitchen, appliance)}</h3>
<ul class="advice">
${cultures.map((advice) => cultureItem(page, appliance, advice))}</ul>`;
};

export const kitchenAdvice = (page: KitchenPage): Markup | null => {
  const blocks = page.analysis.advice.appliances
    .map((appliance) => block(page, appliance))
    .filter((one) => one !== null);
  const match = kitchenMatch(page);
  if (blocks.length === 0 && match === null) return null;
  return markup`
<section aria-labelledby="advice">
<h2 id="advice">What to change, and what that should do</h2>
${match}
${blocks}
</section>`;
};
