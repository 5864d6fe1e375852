/**
 * Any table in any logger's dialect. What a person would have to say beside
 * the file is in `dialectOptions`: nothing, unless the file itself leaves it
 * open. Which probe sits where is not in a file either: `probeOptions`.
 */
import { createRandom } from "./random.ts";
import { encoded } from "./dialect-bytes.ts";
import { dateOrderIsOpen, timeCells, timeHeadings } from "./dialect-time.ts";
import {
  extraColumns,
  languages,
  timeStyles,
  type Dialect,
  type Table,
  type TimeStyle,
} from "./dialect-types.ts";
import { cellUnit, extraHeading, probeHeading, unitStyles, wordsOf } from "./dialect-words.ts";
import { extraCells, preambleLines, trailerLines } from "./dialect-around.ts";

export function sampleDialect(seed: number): Dialect {
  const random = createRandom(seed, "dialect");
  const delimiter = random.weighted<Dialect["delimiter"]>([
    [",", 45],
    [";", 30],
    ["\t", 18],
    ["|", 7],
  ]);
  const time = random.choice(timeStyles);
  const header = !canBeBare(time) || random.chance(0.85);
  const decimal = random.chance(delimiter === "," ? 0.06 : 0.5) ? "," : ".";
  return {
    seed,
    encoding: random.weighted([
      ["utf-8", 45],
      ["utf-8 with mark", 20],
      ["utf-16le", 12],
      ["utf-16be", 6],
      ["windows-1252", 17],
    ]),
    delimiter,
    decimal,
    newline: random.chance(0.5) ? "\n" : "\r\n",
    quoting: random.weighted([
      ["needed", 70],
      ["text", 15],
      ["all", 15],
    ]),
    time,
    language: random.chance(0.5) ? "en" : random.choice(languages),
    header,
    headerEvery: header && random.chance(0.05) ? random.integer(20, 400) : 0,
    unit: random.chance(0.25) ? "degF" : "degC",
    unitPlace: random.weighted([
      ["header", header ? 60 : 0],
      ["cell", 15],
      ["nowhere", 25],
    ]),
    unitStyle: random.integer(0, unitStyles - 1),
    preamble: header ? random.choice(["none", "none", "prose", "pairs"]) : "none",
    trailer: random.choice(["none", "none", "none", "prose", "summary"]),
    numbered: header && random.chance(0.2),
    timeLast: header && random.chance(0.07),
    extras: header
      ? extraColumns.filter((name) => random.chance(name === "dew point" ? 0.04 : 0.1))
      : [],
    flag: random.choice(["ERR", "---", "NaN", "Error", "open", ""]),
    shortTimes: random.chance(0.4),
    plainNames: random.chance(0.12),
  };
}

/** Styles that can be read without a heading. */
const canBeBare = (style: TimeStyle): boolean =>
  !style.startsWith("elapsed") && style !== "index only" && style !== "spreadsheet serial";

/** Whether the table can be written so without losing what it says. */
export function dialectFits(table: Table, dialect: Dialect): boolean {
  const { seconds } = table;
  if (!dialect.header && table.columns.length > 1) return false;
  if (dialect.time !== "index only") return true;
  const step = seconds[1]! - seconds[0]!;
  return seconds.every((value, index) => value === seconds[0]! + index * step);
}

/** Options that the file leaves open; empty for most. */
export function dialectOptions(table: Table, dialect: Dialect): readonly string[] {
  const options: string[] = [];
  if (dialect.time === "index only") options.push("--interval", `${table.seconds[1]}s`);
  if (dateOrderIsOpen(dialect, table)) {
    const order = dialect.time.includes("month-first") ? "month-first" : "day-first";
    options.push("--date-order", order);
  }
  if (dialect.unitPlace === "nowhere" && dialect.unit === "degF") options.push("--unit", "F");
  return options;
}

/** Where each probe sits, for every probe that is not the food's. */
export const probeOptions = (table: Table, dialect: Dialect): readonly string[] =>
  table.columns.flatMap(({ role }, position) =>
    role === "food" ? [] : ["--probe", `${probeHeading(dialect, role, position)}=${role}`],
  );

export function writeDialect(table: Table, dialect: Dialect): Uint8Array {
  const heading = row(dialect, headings(table, dialect), true);
  const extras = extraCells(dialect, table);
  const lines = [...preambleLines(dialect, table)];
  if (dialect.header) lines.push(heading);
  table.seconds.forEach((seconds, index) => {
    const again = dialect.headerEvery > 0 && index > 0 && index % dialect.headerEvery === 0;
    if (again) lines.push(heading);
    const temperatures = table.columns.map(({ celsius }) =>
      temperatureCell(dialect, table, celsius[index]!),
    );
    const times = timeCells(dialect, table, seconds);
    const number = dialect.numbered ? [String(index + 1)] : [];
    const others = dialect.extras.map((column) => extras(column, index));
    lines.push(row(dialect, ordered(dialect, number, times, temperatures, others), false));
  });
  lines.push(...trailerLines(dialect, table));
  return encoded(lines.join(dialect.newline) + dialect.newline, dialect.encoding);
}

const ordered = (
  { timeLast }: Dialect,
  number: readonly string[],
  times: readonly string[],
  temperatures: readonly string[],
  others: readonly string[],
): readonly string[] =>
  timeLast
    ? [...number, ...temperatures, ...others, ...times]
    : [...number, ...times, ...temperatures, ...others];

function headings(table: Table, dialect: Dialect): readonly string[] {
  const number = dialect.numbered ? [wordsOf(dialect).number] : [];
  const probes = table.columns.map(({ role }, position) => probeHeading(dialect, role, position));
  const others = dialect.extras.map((column) => extraHeading(dialect, column));
  return ordered(dialect, number, timeHeadings(dialect), probes, others);
}

/** Places after the point that keep the value: as many as the resolution has, two at least in degF. */
function temperatureCell(dialect: Dialect, table: Table, celsius: number): string {
  if (Number.isNaN(celsius)) return dialect.flag;
  const places = Math.max(1, (String(table.resolution).split(".")[1] ?? "").length);
  const text =
    dialect.unit === "degC"
      ? celsius.toFixed(places)
      : (celsius * 1.8 + 32).toFixed(Math.max(2, places));
  const number = text.replace(".", dialect.decimal);
  return dialect.unitPlace === "cell" ? number + cellUnit(dialect) : number;
}

function row(dialect: Dialect, cells: readonly string[], isHeading: boolean): string {
  const { delimiter, quoting } = dialect;
  const quoted = (cell: string): string => {
    const isText = isHeading || !/^-?[\d.,]+$/.test(cell);
    const must = cell.includes(delimiter) || cell.includes('"');
    const wanted = quoting === "all" || (quoting === "text" && isText && cell !== "");
    return must || wanted ? `"${cell.replaceAll('"', '""')}"` : cell;
  };
  return cells.map(quoted).join(delimiter);
}
