/**
 * Cultures against appliances on a terminal: in each cell the best set-up, its
 * probability and whether it was tested; a list where the table has no room.
 */
import type { ApplianceAdvice, CultureAdvice } from "../advice/advice-types.ts";
import type { Requirement } from "../culture/verdict-types.ts";
import type { KitchenTerminal } from "./kitchen-remarks.ts";
import { adviceOn, answerWord, cellTexts, colouredAnswer } from "./match-cells.ts";
import { matchList } from "./match-list.ts";
import { safe } from "./terminal-page.ts";
import { windowMark } from "./wording/cultures.ts";
import { applianceName } from "./wording/set-ups.ts";
import { wrapText } from "./wrap-text.ts";

interface Column {
  readonly head: string;
  /** One per requirement; null where the appliance was not asked about it. */
  readonly cells: readonly (CultureAdvice | null)[];
}

interface Table {
  readonly columns: readonly Column[];
  /** Of the cultures' names, and of each column. */
  readonly first: number;
  readonly width: number;
}

const gap = 2;
/** Wider cells would only pull the table apart. */
const widestCell = 34;

const lengthOf = (text: string): number => [...text].length;
const most = (lengths: readonly number[]): number =>
  lengths.reduce((so, one) => Math.max(so, one), 0);
const padded = (text: string, width: number): string =>
  text + " ".repeat(Math.max(width - lengthOf(text), 0));

const nameOf = (asked: Requirement, screen: KitchenTerminal): string =>
  safe(windowMark(asked), screen);

const cellLines = (cell: CultureAdvice | null, screen: KitchenTerminal): readonly string[] =>
  cell === null ? [] : cellTexts(cell, screen);

const columnOf = (one: ApplianceAdvice, screen: KitchenTerminal): Column => {
  const { kitchen, requirements } = screen.analysis;
  return {
    head: safe(applianceName(kitchen, one), screen),
    cells: requirements.map((asked) => adviceOn(one, asked)),
  };
};

const longestWord = (columns: readonly Column[], screen: KitchenTerminal): number => {
  const texts = columns.flatMap(({ head, cells }) => [
    head,
    ...cells.flatMap((cell) => cellLines(cell, screen)),
  ]);
  return most(texts.flatMap((text) => text.split(" ").map(lengthOf)));
};

/** Columns share the width evenly; null where one of their words would not fit. */
const tableOf = (screen: KitchenTerminal): Table | null => {
  const { advice, requirements } = screen.analysis;
  const columns = advice.appliances.map((one) => columnOf(one, screen));
  const first = most(requirements.map((asked) => lengthOf(nameOf(asked, screen))));
  const room = Math.floor((screen.width - first) / Math.max(columns.length, 1)) - gap;
  if (columns.length === 0 || longestWord(columns, screen) > room) return null;
  return { columns, first, width: Math.min(room, widestCell) };
};

/** Texts side by side, each wrapped in its column: as many lines as the longest needs. */
const sideBySide = (
  name: string,
  cells: readonly (readonly string[])[],
  { first, width }: Table,
): string[] => {
  const wrapped = cells.map((texts) => texts.flatMap((text) => wrapText(text, width)));
  const height = most(wrapped.map(({ length }) => length));
  return Array.from({ length: height }, (_, at) =>
    [padded(at === 0 ? name : "", first), ...wrapped.map((lines) => padded(lines[at] ?? "", width))]
      .join(" ".repeat(gap))
      .trimEnd(),
  );
};

/** Colour goes on last, for it has no width: the answers begin the cells of a row's first line. */
const withColours = (
  line: string,
  cells: readonly (CultureAdvice | null)[],
  { first, width }: Table,
  screen: KitchenTerminal,
): string => {
  const signs = [...line];
  const parts = cells.map((cell, at) => {
    const from = first + gap + at * (gap + width);
    const text = signs.slice(from, from + width + gap).join("");
    return cell === null
      ? text
      : colouredAnswer(cell, screen) + text.slice(answerWord(cell).length);
  });
  return signs.slice(0, first + gap).join("") + parts.join("");
};

const rowLines = (
  asked: Requirement,
  row: number,
  table: Table,
  screen: KitchenTerminal,
): string[] => {
  const cells = table.columns.map((column) => column.cells[row] ?? null);
  const texts = cells.map((cell) => cellLines(cell, screen));
  const [line = "", ...rest] = sideBySide(nameOf(asked, screen), texts, table);
  return ["", withColours(line, cells, table, screen), ...rest];
};

export const matchTable = (screen: KitchenTerminal): string[] => {
  const table = tableOf(screen);
  if (table === null) return matchList(screen);
  const heads = table.columns.map(({ head }) => [head]);
  return sideBySide("", heads, table).concat(
    screen.analysis.requirements.flatMap((asked, row) => rowLines(asked, row, table, screen)),
  );
};
