/** `match` on a terminal: cultures against appliances, then where each goes when all run at the same time. */
import type { MatchPlace } from "../advice/advice-types.ts";
import type { KitchenAnalysis } from "../kitchen-analysis-types.ts";
import { markOf } from "./kitchen-page.ts";
import { missingLines, parted, unreadLines } from "./kitchen-remarks.ts";
import type { KitchenTerminal } from "./kitchen-remarks.ts";
import { matchTable } from "./match-table.ts";
import { percent } from "./number-format.ts";
import { labelled, paragraph } from "./terminal-page.ts";
import type { TerminalOptions } from "./terminal-page.ts";
import { matchPlaceText } from "./wording/matches.ts";
import { noTestsYet } from "./wording/missing-parts.ts";
import { probabilityText } from "./wording/probability.ts";
import { terminalWriting } from "./writing.ts";

const placeLines = (place: MatchPlace, screen: KitchenTerminal): string[] => {
  const { analysis, writing } = screen;
  const text = `${markOf(analysis, place.culture)}: ${matchPlaceText(analysis, place, writing)}`;
  return paragraph(text, screen, "  ", "    ");
};

const weakestLines = ({ analysis, writing, ...screen }: KitchenTerminal): string[] => {
  const { weakest, places } = analysis.advice.match;
  if (weakest === null || places.filter(({ placed }) => placed !== null).length < 2) return [];
  const chance = probabilityText(weakest, analysis.confidence, writing.space);
  return paragraph(`The weakest of these places: ${chance} likely to hold.`, screen, "  ");
};

/** With a single appliance there is nothing to share out. */
const oneAtATime = "One appliance: one culture at a time, each as it stands above.";

const placesBlock = (screen: KitchenTerminal): string[] => {
  const { appliances, match } = screen.analysis.advice;
  const { places } = match;
  if (appliances.length === 1 && places.length > 1) return paragraph(oneAtATime, screen);
  const title =
    places.length === 1
      ? "Its place"
      : "If all of them run at the same time, one appliance for each";
  return [
    ...paragraph(title, screen),
    ...places.flatMap((place) => placeLines(place, screen)),
    ...weakestLines(screen),
  ];
};

/** What the words in the table mean. */
const wordsBlock = (screen: KitchenTerminal): string[] => {
  const { analysis, writing } = screen;
  const sure = percent(analysis.confidence, writing.space);
  const floor = percent(analysis.advice.floor, writing.space);
  const text =
    `CAN: ${sure} likely to hold, or more. MAY: ${floor} or more. CANNOT: its tests speak against it. ` +
    `UNKNOWN: under ${floor}, and too little is known. What is not tested is reckoned from other tests and from assumptions: test it once with water before trusting a batch to it.`;
  return labelled("Words", text, screen);
};

/** The answer as text, lines parted by "\n", ending in one. */
export const toMatchTerminal = (analysis: KitchenAnalysis, options: TerminalOptions): string => {
  const writing = terminalWriting(analysis.kitchen.shownUnit, options.ascii);
  const screen: KitchenTerminal = { ...options, writing, analysis };
  const missing = missingLines(screen);
  if (missing.length > 0) return [...missing, ""].join("\n");
  const untested = noTestsYet(analysis);
  const blocks = [
    untested === null ? [] : paragraph(untested, screen),
    matchTable(screen),
    placesBlock(screen),
    [...wordsBlock(screen), ...unreadLines(screen)],
  ];
  return [...parted(blocks), ""].join("\n");
};
