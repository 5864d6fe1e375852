/** Set-ups against cultures on a terminal: a table where it has room, else a line for each. */
import type { Requirement, Verdict } from "../culture/verdict-types.ts";
import type { KitchenAnalysis, SetUpAnalysis } from "../kitchen-analysis-types.ts";
import { appliancesOf, counted, setUpsOf, unreadTests } from "./kitchen-page.ts";
import { columnsOf as verdictColumns, verdictLine } from "./terminal-overview.ts";
import { chanceOf, coloured, mark, safe } from "./terminal-page.ts";
import type { VerdictScreen } from "./terminal-page.ts";
import { windowMark } from "./wording/cultures.ts";
import { gist } from "./wording/gist.ts";
import { setUpText } from "./wording/set-ups.ts";
import { wrapText } from "./wrap-text.ts";

export type KitchenScreen = VerdictScreen & { readonly analysis: KitchenAnalysis };

const gap = 2;

const lengthOf = (text: string): number => [...text].length;
const padded = (text: string, width: number): string =>
  text + " ".repeat(Math.max(width - lengthOf(text), 0));
const longest = (texts: readonly string[]): number =>
  texts.reduce((most, text) => Math.max(most, lengthOf(text)), 0);

const nameOf = (setUp: SetUpAnalysis, screen: KitchenScreen): string => {
  const name = setUpText(screen.analysis.kitchen, setUp.setUp, screen.writing);
  const tests = counted(setUp.testIds.length, "test");
  return safe(`${name} (${tests})`, screen).replaceAll("\u00a0", " ");
};

const cellText = (verdict: Verdict, screen: KitchenScreen): string =>
  `${mark(verdict)} ${safe(chanceOf(verdict, screen), screen).replaceAll("\u00a0", " ")}`;

const found = ({ verdicts }: SetUpAnalysis, asked: Requirement): Verdict | undefined =>
  verdicts.find(({ requirement }) => requirement.culture === asked.culture);

interface Table {
  /** Columns before the first cell. */
  readonly first: number;
  readonly widths: readonly number[];
  /** Cells stand in a line of their own below the set-up's name. */
  readonly stacked: boolean;
}

const stackedIndent = 4;

/** null where the terminal is too narrow for it. */
const tableOf = (screen: KitchenScreen): Table | null => {
  const { setUps, requirements } = screen.analysis;
  const first = 2 + longest(setUps.map((setUp) => nameOf(setUp, screen)));
  const widths = requirements.map((asked) =>
    longest([
      safe(windowMark(asked), screen),
      ...setUps.flatMap((setUp) => {
        const verdict = found(setUp, asked);
        return verdict === undefined ? [] : [cellText(verdict, screen)];
      }),
    ]),
  );
  const cells = widths.reduce((so, width) => so + gap + width, 0);
  const fits = (start: number): boolean => widths.length > 0 && start + cells <= screen.width;
  if (fits(first)) return { first, widths, stacked: false };
  return fits(stackedIndent - gap) ? { first: stackedIndent - gap, widths, stacked: true } : null;
};

const headLine = ({ first, widths }: Table, screen: KitchenScreen): string =>
  [
    " ".repeat(first),
    ...screen.analysis.requirements.map((asked, at) =>
      padded(safe(windowMark(asked), screen), widths[at] ?? 0),
    ),
  ]
    .join(" ".repeat(gap))
    .trimEnd();

/** Colour goes on last: it has no width. */
const tableLines = (
  setUp: SetUpAnalysis,
  { first, widths, stacked }: Table,
  screen: KitchenScreen,
): string[] => {
  const cells = screen.analysis.requirements.map((asked, at) => {
    const verdict = found(setUp, asked);
    if (verdict === undefined) return " ".repeat(widths[at] ?? 0);
    const text = padded(cellText(verdict, screen), widths[at] ?? 0);
    return coloured(mark(verdict), verdict, screen) + text.slice(mark(verdict).length);
  });
  const line = (start: string): string =>
    [padded(start, first), ...cells].join(" ".repeat(gap)).trimEnd();
  if (!stacked) return [line(`  ${nameOf(setUp, screen)}`)];
  return [...wrapText(nameOf(setUp, screen), screen.width, "  ", "  "), line("")];
};

/** What is amiss or would settle it, for all cultures it does not hold. */
const gistLines = (setUp: SetUpAnalysis, screen: KitchenScreen): string[] => {
  const parts = setUp.verdicts.flatMap((verdict) => {
    const words = gist(verdict, screen.writing);
    return words === null ? [] : [`${windowMark(verdict.requirement)}: ${words}`];
  });
  return parts.length === 0
    ? []
    : wrapText(safe(parts.join("; "), screen), screen.width, "    ", "    ");
};

const setUpLines = (setUp: SetUpAnalysis, table: Table | null, screen: KitchenScreen): string[] => {
  if (table !== null) return [...tableLines(setUp, table, screen), ...gistLines(setUp, screen)];
  const columns = verdictColumns(
    screen.analysis.setUps.flatMap(({ verdicts }) => verdicts),
    screen,
  );
  return [
    ...wrapText(nameOf(setUp, screen), screen.width, "  ", "    "),
    ...setUp.verdicts.flatMap((verdict) => verdictLine(verdict, columns, screen)),
  ];
};

const untestedText = (id: string, analysis: KitchenAnalysis): string =>
  unreadTests(analysis).some(({ test }) => test.appliance === id)
    ? "no test could be read"
    : "not tested yet";

export const kitchenOverview = (screen: KitchenScreen): string[] => {
  const { analysis, width } = screen;
  const table = tableOf(screen);
  const lines = appliancesOf(analysis).flatMap((appliance) => {
    const setUps = setUpsOf(analysis, appliance);
    const none = setUps.length === 0 ? `: ${untestedText(appliance.id, analysis)}` : "";
    return wrapText(safe(`${appliance.name}${none}`, screen), width).concat(
      setUps.flatMap((setUp) => setUpLines(setUp, table, screen)),
    );
  });
  if (lines.length === 0) return ["No water test to report on yet."];
  return table === null || analysis.setUps.length === 0
    ? lines
    : [headLine(table, screen), ...lines];
};
