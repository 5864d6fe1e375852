/** How a logger writes its file. */
export type Encoding = "utf-8" | "utf-8 with mark" | "utf-16le" | "utf-16be" | "windows-1252";

export const timeStyles = [
  "iso",
  "iso with offset",
  "year-first",
  "day-first dots",
  "day-first slashes",
  "day-first short year",
  "month-first slashes",
  "month-first 12 h",
  "month name",
  "date and time columns, iso",
  "date and time columns, day-first",
  "date and time columns, month-first 12 h",
  "clock only",
  "clock only 12 h",
  "epoch seconds",
  "epoch milliseconds",
  "elapsed seconds",
  "elapsed minutes",
  "elapsed hours",
  "elapsed clock",
  "spreadsheet serial",
  "index only",
] as const;
export type TimeStyle = (typeof timeStyles)[number];

export const languages = ["en", "de", "fr", "es", "it", "nl", "pt"] as const;
export type Language = (typeof languages)[number];

export const extraColumns = ["humidity", "battery", "light", "status", "dew point"] as const;
export type ExtraColumn = (typeof extraColumns)[number];

export interface Dialect {
  readonly seed: number;
  readonly encoding: Encoding;
  readonly delimiter: "," | ";" | "\t" | "|";
  readonly decimal: "." | ",";
  readonly newline: "\n" | "\r\n";
  readonly quoting: "needed" | "text" | "all";
  readonly time: TimeStyle;
  readonly language: Language;
  readonly header: boolean;
  /** A row of column numbers or a repeated heading now and then; 0 for never. */
  readonly headerEvery: number;
  readonly unit: "degC" | "degF";
  readonly unitPlace: "header" | "cell" | "nowhere";
  /** How the unit is set: "(°C)", "[C]", ... */
  readonly unitStyle: number;
  readonly preamble: "none" | "prose" | "pairs";
  readonly trailer: "none" | "prose" | "summary";
  readonly numbered: boolean;
  /** Temperatures before the time. */
  readonly timeLast: boolean;
  readonly extras: readonly ExtraColumn[];
  /** What stands in a cell whose sensor failed. */
  readonly flag: string;
  /** Leave the seconds out where every reading is on a whole minute. */
  readonly shortTimes: boolean;
  /** Names that say nothing about the place: "Channel 1", "Channel 2". */
  readonly plainNames: boolean;
}

/** What is written: times from the first reading and one or two probes. */
export interface Table {
  readonly seconds: Float64Array;
  /** Wall clock of the first reading, ms since 1970 as if in UTC. */
  readonly startWallClock: number;
  /** Smallest step of the values, degC. */
  readonly resolution: number;
  readonly columns: readonly {
    readonly role: "food" | "bath" | "room";
    /** degC; NaN where the sensor failed. */
    readonly celsius: Float64Array;
  }[];
}
