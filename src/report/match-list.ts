/** Cultures against appliances where a table has no room: culture by culture, a line for each appliance. */
import type { CultureAdvice } from "../advice/advice-types.ts";
import type { Requirement } from "../culture/verdict-types.ts";
import type { KitchenTerminal } from "./kitchen-remarks.ts";
import { adviceOn, answerWord, chanceText, colouredAnswer, testedText } from "./match-cells.ts";
import { paragraph } from "./terminal-page.ts";
import { shortCultureName, windowMark } from "./wording/cultures.ts";
import { applianceName, fullSetUpText } from "./wording/set-ups.ts";

const line = (advice: CultureAdvice, name: string, screen: KitchenTerminal): string[] => {
  const { best } = advice;
  const { kitchen } = screen.analysis;
  const setUp = best === null ? name : fullSetUpText(kitchen, best.setUp, screen.writing);
  const answer = `${answerWord(advice)} ${chanceText(advice, screen)}`.trim();
  const text = `${answer}: ${setUp} (${testedText(advice)})`;
  const [first = "", ...rest] = paragraph(text, screen, "  ", "    ");
  const after = 2 + answerWord(advice).length;
  return [`  ${colouredAnswer(advice, screen)}${first.slice(after)}`, ...rest];
};

const heading = (asked: Requirement, screen: KitchenTerminal): string[] => {
  const mark = windowMark(asked);
  return paragraph(asked.name === "" ? mark : `${mark}: ${shortCultureName(asked)}`, screen);
};

export const matchList = (screen: KitchenTerminal): string[] => {
  const { advice, kitchen, requirements } = screen.analysis;
  return requirements.flatMap((asked) =>
    heading(asked, screen).concat(
      advice.appliances.flatMap((one) => {
        const cell = adviceOn(one, asked);
        return cell === null ? [] : line(cell, applianceName(kitchen, one), screen);
      }),
    ),
  );
};
