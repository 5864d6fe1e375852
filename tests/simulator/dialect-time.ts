/** Cells and headings of the time, in every style. */
import { wordsOf } from "./dialect-words.ts";
import type { Dialect, Table, TimeStyle } from "./dialect-types.ts";

const two = (value: number): string => String(value).padStart(2, "0");

const monthNames = "Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec".split(" ");

/** Cells for the reading `seconds` after the first; one or two of them, none for "index only". */
export function timeCells(dialect: Dialect, table: Table, seconds: number): readonly string[] {
  const at = new Date(table.startWallClock + seconds * 1000);
  const date = dateText(dialect.time, at);
  const short = dialect.shortTimes && onWholeMinutes(table);
  const clock = isTwelveHour(dialect.time) ? clock12(at, short) : clock24(at, short);
  if (dialect.time === "iso") return [`${date}T${clock}`];
  if (dialect.time === "iso with offset") return [`${date}T${clock}+01:00`];
  if (dialect.time === "clock only" || dialect.time === "clock only 12 h") return [clock];
  if (dialect.time.startsWith("date and time columns")) return [date, clock];
  if (date !== "") return [`${date} ${clock}`];
  return numericCells(dialect, at.getTime(), seconds);
}

const isTwelveHour = (style: TimeStyle): boolean => style.endsWith("12 h");

export const onWholeMinutes = ({ seconds, startWallClock }: Table): boolean =>
  startWallClock % 60_000 === 0 && seconds.every((value) => value % 60 === 0);

function dateText(style: TimeStyle, at: Date): string {
  const [year, month, day] = [at.getUTCFullYear(), at.getUTCMonth() + 1, at.getUTCDate()];
  if (style.includes("iso")) return `${year}-${two(month)}-${two(day)}`;
  if (style === "year-first") return `${year}/${two(month)}/${two(day)}`;
  if (style === "day-first dots" || style === "date and time columns, day-first")
    return `${two(day)}.${two(month)}.${year}`;
  if (style === "day-first slashes") return `${two(day)}/${two(month)}/${year}`;
  if (style === "day-first short year") return `${two(day)}.${two(month)}.${two(year % 100)}`;
  if (style === "month name") return `${day} ${monthNames[month - 1]} ${year}`;
  return style.includes("month-first") ? `${month}/${day}/${year}` : "";
}

const clock24 = (at: Date, short: boolean): string =>
  `${two(at.getUTCHours())}:${two(at.getUTCMinutes())}${short ? "" : `:${two(at.getUTCSeconds())}`}`;

function clock12(at: Date, short: boolean): string {
  const hour = at.getUTCHours();
  const rest = clock24(at, short).slice(2);
  return `${((hour + 11) % 12) + 1}${rest} ${hour < 12 ? "AM" : "PM"}`;
}

function numericCells(dialect: Dialect, milliseconds: number, seconds: number): readonly string[] {
  const point = (text: string): string => text.replace(".", dialect.decimal);
  switch (dialect.time) {
    case "epoch seconds":
      return [String(milliseconds / 1000)];
    case "epoch milliseconds":
      return [String(milliseconds)];
    case "elapsed seconds":
      return [String(seconds)];
    case "elapsed minutes":
      return [point((seconds / 60).toFixed(3))];
    case "elapsed hours":
      return [point((seconds / 3600).toFixed(5))];
    case "elapsed clock":
      return [
        `${Math.floor(seconds / 3600)}:${two(Math.floor(seconds / 60) % 60)}:${two(seconds % 60)}`,
      ];
    case "spreadsheet serial":
      // Day 1 is 1900-01-01 with the spreadsheet's leap day of 1900: 1970-01-01 is day 25569.
      return [point((milliseconds / 86_400_000 + 25_569).toFixed(7))];
    default:
      return [];
  }
}

export function timeHeadings(dialect: Dialect): readonly string[] {
  const own = wordsOf(dialect);
  const { time } = dialect;
  if (time === "index only") return [];
  if (time.startsWith("date and time columns")) return [own.date, own.time];
  if (time.startsWith("clock only")) return [own.time];
  if (time === "epoch seconds") return ["Timestamp"];
  if (time === "epoch milliseconds") return ["Timestamp (ms)"];
  if (time === "elapsed seconds") return [`${own.elapsed} (s)`];
  if (time === "elapsed minutes") return [`${own.elapsed} (min)`];
  if (time === "elapsed hours") return [`${own.elapsed} (h)`];
  if (time === "elapsed clock") return [`${own.elapsed} (h:mm:ss)`];
  return [own.dateTime];
}

/** Whether nothing in the dates says which of two numbers is the day: one date only, both at most 12 and different. */
export function dateOrderIsOpen(dialect: Dialect, table: Table): boolean {
  const numeric = /slashes|month-first|short year|dots|columns, day-first/.test(dialect.time);
  const day = (seconds: number): string =>
    new Date(table.startWallClock + seconds * 1000).toISOString().slice(0, 10);
  const [first, last] = [day(0), day(table.seconds.at(-1)!)];
  const [month, date] = [Number(first.slice(5, 7)), Number(first.slice(8, 10))];
  return numeric && first === last && date <= 12 && date !== month;
}
