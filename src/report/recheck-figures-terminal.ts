/** Two tests side by side on a terminal: a table where it fits, else a line for each figure. */
import type { Recheck } from "../advice/recheck-types.ts";
import type { KitchenTerminal } from "./kitchen-remarks.ts";
import { paragraph, safe } from "./terminal-page.ts";
import { calendarDay } from "./time-text.ts";
import { recheckFigures } from "./wording/recheck-figures.ts";

const indent = "  ";
const gap = 2;

const lengthOf = (text: string): number => [...text].length;
const padded = (text: string, width: number): string =>
  text + " ".repeat(Math.max(width - lengthOf(text), 0));

/** Its day, else its place. */
const headOf = (startedAt: number | null, otherwise: string): string =>
  calendarDay(startedAt) ?? otherwise;

const rowsOf = (recheck: Recheck, screen: KitchenTerminal): readonly (readonly string[])[] => {
  const head = [
    "",
    headOf(recheck.baseline.startedAt, "baseline"),
    headOf(recheck.newest.startedAt, "newest"),
    "change",
  ];
  const figures = recheckFigures(recheck, screen.writing).map((one) => [
    one.name,
    one.before,
    one.now,
    one.changed ? `${one.change} *` : one.change,
  ]);
  return [head, ...figures].map((row) => row.map((cell) => safe(cell, screen)));
};

const changedNote = (recheck: Recheck, { writing }: KitchenTerminal): string[] =>
  recheckFigures(recheck, writing).some(({ changed }) => changed) ? ["* more than chance"] : [];

/** Without a table: "Average 38.2 °C (...), now 38.3 °C (...): +0.1 °C (...)". */
const listLines = (rows: readonly (readonly string[])[], screen: KitchenTerminal): string[] =>
  rows
    .slice(1)
    .flatMap(([name = "", then = "", now = "", change = ""]) =>
      paragraph(`${name} ${then}, now ${now}: ${change}`, screen, indent, `${indent}  `),
    );

export const figureLines = (recheck: Recheck, screen: KitchenTerminal): string[] => {
  const rows = rowsOf(recheck, screen);
  const widths = rows.reduce<readonly number[]>(
    (so, row) => row.map((cell, at) => Math.max(so[at] ?? 0, lengthOf(cell))),
    [],
  );
  const whole = widths.reduce((sum, width) => sum + width + gap, indent.length - gap);
  const note = changedNote(recheck, screen).map((text) => indent + text);
  if (whole > screen.width) return [...listLines(rows, screen), ...note];
  const line = (row: readonly string[]): string =>
    (indent + row.map((cell, at) => padded(cell, widths[at] ?? 0)).join(" ".repeat(gap)))
      .replaceAll("\u00a0", " ")
      .trimEnd();
  return [...rows.map(line), ...note];
};
