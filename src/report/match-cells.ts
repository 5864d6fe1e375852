/** What `match` says of one culture on one appliance, in a few words. */
import type { Answer, ApplianceAdvice, CultureAdvice } from "../advice/advice-types.ts";
import type { Requirement, VerdictWord } from "../culture/verdict-types.ts";
import type { KitchenTerminal } from "./kitchen-remarks.ts";
import { coloured, safe } from "./terminal-page.ts";
import { probabilityText } from "./wording/probability.ts";
import { containerName, settingText } from "./wording/set-ups.ts";

/** An answer takes the colour of the verdict it comes to; the word says the same. */
const verdictLike: Readonly<Record<Answer, VerdictWord>> = {
  can: "holds",
  may: "unproven",
  cannot: "misses",
  unknown: "unproven",
};

export const answerWord = ({ answer }: CultureAdvice): string => answer.toUpperCase();

export const colouredAnswer = (advice: CultureAdvice, screen: KitchenTerminal): string =>
  coloured(answerWord(advice), { verdict: verdictLike[advice.answer] }, screen);

export const chanceText = (
  { chance }: CultureAdvice,
  { analysis, writing }: KitchenTerminal,
): string =>
  chance === null ? "" : probabilityText(chance.probability, analysis.confidence, writing.space);

export const testedText = ({ best }: CultureAdvice): string =>
  best === null ? "nothing to choose" : best.basis === "tested" ? "tested" : "not tested";

const capital = (text: string): string => text.replace(/^./, (letter) => letter.toUpperCase());

/** Lines of a cell before they are wrapped: answer, setting, container, whether it was tested. */
export const cellTexts = (advice: CultureAdvice, screen: KitchenTerminal): readonly string[] => {
  const { best } = advice;
  const { analysis, writing } = screen;
  const setting = best === null ? null : settingText(best.setUp.setting, writing);
  return [
    `${answerWord(advice)} ${chanceText(advice, screen)}`.trim(),
    ...(setting === null ? [] : [capital(setting)]),
    ...(best === null ? [] : [containerName(analysis.kitchen, best.setUp)]),
    testedText(advice),
  ].map((text) => safe(text, screen));
};

export const adviceOn = ({ cultures }: ApplianceAdvice, asked: Requirement): CultureAdvice | null =>
  cultures.find(({ culture }) => culture === asked.culture) ?? null;
