import fc from "fast-check";
import type { ReadingOptions } from "../../src/readings/readings-file.ts";
import { encode } from "./reading-helpers.ts";
import type { TextEncoding } from "./reading-helpers.ts";

/** A table of readings and a way to write it; made by hand, no real logger's. */
export interface WrittenTable {
  readonly celsius: readonly (readonly number[])[];
  readonly stepSeconds: number;
  readonly start: number;
  readonly encoding: TextEncoding;
  readonly delimiter: string;
  readonly comma: boolean;
  readonly lineEnd: string;
  readonly times: TimeStyle;
  readonly heading: "in heading" | "units line" | "in cells" | "none";
  readonly degF: boolean;
  readonly preamble: number;
  readonly trailer: number;
  readonly extras: boolean;
  readonly quoteAll: boolean;
}

export const timeStyles = [
  "iso",
  "german",
  "two columns",
  "12 h",
  "clock",
  "epoch",
  "elapsed s",
  "h:mm:ss",
] as const;
export type TimeStyle = (typeof timeStyles)[number];

const two = (value: number): string => String(value).padStart(2, "0");
const parts = (at: number) => {
  const date = new Date(at);
  return {
    iso: date.toISOString().slice(0, 10),
    german: `${two(date.getUTCDate())}.${two(date.getUTCMonth() + 1)}.${date.getUTCFullYear()}`,
    american: `${date.getUTCMonth() + 1}/${date.getUTCDate()}/${date.getUTCFullYear()}`,
    clock: date.toISOString().slice(11, 19),
    half: `${date.getUTCHours() % 12 || 12}:${date.toISOString().slice(14, 19)} ${date.getUTCHours() < 12 ? "AM" : "PM"}`,
  };
};

const timeCells = ({ times, start, stepSeconds }: WrittenTable, row: number): string[] => {
  const elapsed = row * stepSeconds;
  const now = parts(start + elapsed * 1000);
  if (times === "iso") return [`${now.iso}T${now.clock}`];
  if (times === "german") return [`${now.german} ${now.clock}`];
  if (times === "two columns") return [now.iso, now.clock];
  if (times === "12 h") return [`${now.american} ${now.half}`];
  if (times === "clock") return [now.clock];
  if (times === "epoch") return [String(start / 1000 + elapsed)];
  if (times === "elapsed s") return [String(elapsed)];
  const rest = elapsed % 3600;
  return [`${Math.floor(elapsed / 3600)}:${two(Math.floor(rest / 60))}:${two(rest % 60)}`];
};

const timeHeadings: Record<TimeStyle, readonly string[]> = {
  iso: ["Time"],
  german: ["Zeit"],
  "two columns": ["Date", "Time"],
  "12 h": ["Date Time"],
  clock: ["Uhrzeit"],
  epoch: ["Unix time"],
  "elapsed s": ["Elapsed (s)"],
  "h:mm:ss": ["Elapsed time"],
};

const preambles = [
  "Logger 3",
  "Serial number: 10442",
  "",
  "Place: shelf, left",
  "Interval: as set",
];
const trailers = ["", "Average 38.4 over all", "End of data"];

const temperatureText = (table: WrittenTable, value: number): string => {
  const text = (table.degF ? value * 1.8 + 32 : value).toFixed(2);
  const number = table.comma ? text.replace(".", ",") : text;
  return table.heading === "in cells" ? `${number} °${table.degF ? "F" : "C"}` : number;
};

/** The file's bytes. */
export const writeTable = (table: WrittenTable): Uint8Array => {
  const { celsius, delimiter, heading, extras } = table;
  const unit = table.degF ? "°F" : "°C";
  const line = (cells: readonly string[]): string =>
    cells
      .map((cell) => (table.quoteAll || cell.includes(delimiter) ? `"${cell}"` : cell))
      .join(delimiter);
  const names = celsius.map((_, at) =>
    heading === "in heading" ? `T${at + 1} (${unit})` : `T${at + 1}`,
  );
  const times = timeHeadings[table.times];
  const lines = preambles.slice(0, table.preamble);
  lines.push(line([...times, ...names, ...(extras ? ["Humidity (%)", "Remark"] : [])]));
  if (heading === "units line")
    lines.push(
      line([...times.map(() => ""), ...names.map(() => unit), ...(extras ? ["%", ""] : [])]),
    );
  for (let row = 0; row < (celsius[0]?.length ?? 0); row += 1) {
    const values = celsius.map((column) => temperatureText(table, column[row] ?? 0));
    const others = extras ? [String(40 + (row % 5)), row === 1 ? "lid off" : ""] : [];
    lines.push(line([...timeCells(table, row), ...values, ...others]));
  }
  lines.push(...trailers.slice(0, table.trailer));
  return encode(lines.join(table.lineEnd) + table.lineEnd, table.encoding);
};

/** What such a file leaves open and the person would say. */
export const optionsFor = ({
  times,
  start,
  stepSeconds,
  celsius,
  heading,
  degF,
}: WrittenTable): ReadingOptions => {
  const last = start + ((celsius[0]?.length ?? 1) - 1) * stepSeconds * 1000;
  const open = new Date(start).getUTCDate() <= 12 && new Date(last).getUTCDate() <= 12;
  return {
    ...(times === "german" && open ? { dateOrder: "day-first" } : {}),
    ...(times === "12 h" && open ? { dateOrder: "month-first" } : {}),
    ...(heading === "none" ? { unit: degF ? "degF" : "degC" } : {}),
  };
};

const column = (length: number): fc.Arbitrary<number[]> =>
  fc
    .array(fc.integer({ min: -20, max: 20 }), { minLength: length, maxLength: length })
    .map((steps) => {
      let level = 38;
      return steps.map((step) => {
        level = Math.min(60, Math.max(15, level + step / 100));
        return Number(level.toFixed(2));
      });
    });

/** Any table in any dialect; a slow walk about 38 degC, so that nothing in it is a spike or a code. */
export const anyTable: fc.Arbitrary<WrittenTable> = fc
  .record({ rows: fc.integer({ min: 6, max: 40 }), probes: fc.integer({ min: 1, max: 3 }) })
  .chain(({ rows, probes }) =>
    fc.record({
      celsius: fc.tuple(...Array.from({ length: probes }, () => column(rows))),
      stepSeconds: fc.constantFrom(10, 60, 300, 1800),
      start: fc.integer({ min: 0, max: 3000 }).map((day) => Date.UTC(2020, 0, 1 + day, 20, 15)),
      encoding: fc.constantFrom<TextEncoding>(
        "utf-8",
        "utf-8-bom",
        "utf-16le",
        "utf-16be",
        "utf-16le-bare",
        "windows-1252",
      ),
      delimiter: fc.constantFrom(",", ";", "\t", "|"),
      comma: fc.boolean(),
      lineEnd: fc.constantFrom("\n", "\r\n", "\r"),
      times: fc.constantFrom(...timeStyles),
      heading: fc.constantFrom<WrittenTable["heading"]>(
        "in heading",
        "units line",
        "in cells",
        "none",
      ),
      degF: fc.boolean(),
      preamble: fc.integer({ min: 0, max: preambles.length }),
      trailer: fc.integer({ min: 0, max: trailers.length }),
      extras: fc.boolean(),
      quoteAll: fc.boolean(),
    }),
  );
