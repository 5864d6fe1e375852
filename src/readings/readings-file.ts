import type { Notice } from "../notice.ts";
import type { TemperatureUnit } from "../quantity.ts";
import type { Series } from "./series.ts";

/** Why a row, or one cell of a row, is not used. */
export type SetAsideReason =
  /** no number where the temperature should be */
  | "unparseable-temperature"
  /** no time that can be understood */
  | "unparseable-time"
  /** an empty temperature cell */
  | "missing"
  /** a value by which a sensor says that it failed (85.0 power-on, -127 disconnected) */
  | "sensor-fault"
  /** a word by which a logger says that the sensor failed (ERR, open, ---) */
  | "text-flag"
  /** a number that no water test can show */
  | "out-of-range"
  /** same time as a row before it */
  | "duplicate"
  /** one or two readings that leap away and come straight back (Hampel) */
  | "spike"
  /** a row of something else than a temperature, where a column says so (humidity, battery) */
  | "other-quantity"
  /** the heading printed again in the middle */
  | "repeated-header"
  /** text after the last reading, such as a summary line */
  | "trailer";

/** A count of what was set aside for one reason; `firstLine` is 1-based in the file as it came. */
export interface SetAside {
  readonly reason: SetAsideReason;
  readonly count: number;
  readonly firstLine: number;
}

/** The same for single cells of rows that are used because another probe's cell is good. */
export interface CellsSetAside extends SetAside {
  readonly probe: string;
}

/** How the time of each row was written. */
export type TimeFormat =
  | "date-time"
  | "date-and-time-columns"
  | "clock"
  | "epoch-seconds"
  | "epoch-milliseconds"
  | "epoch-microseconds"
  | "elapsed-milliseconds"
  | "elapsed-seconds"
  | "elapsed-minutes"
  | "elapsed-hours"
  | "elapsed-clock"
  | "spreadsheet-serial"
  | "index";

/** A unit of temperature that a file may be written in. */
export type FileUnit = TemperatureUnit | "K";

/**
 * One logger file, read. `rowsRead` counts every non-blank record after the
 * header (or from the first record where there is no header), and blank lines
 * between readings where these are all a line holds; it always
 * equals `rowsUsed` plus the sum of `setAside` counts. A row is used when at
 * least one of its temperature cells is.
 */
export interface ReadingsFile {
  readonly name: string;
  readonly rowsRead: number;
  readonly rowsUsed: number;
  readonly setAside: readonly SetAside[];
  readonly cellsSetAside: readonly CellsSetAside[];
  readonly encoding: "utf-8" | "utf-16le" | "utf-16be" | "windows-1252";
  /** " " stands for columns set apart by runs of blanks. */
  readonly delimiter: "," | ";" | "\t" | "|" | " ";
  readonly decimal: "." | ",";
  /** 1-based line of the heading; null where the file has none. */
  readonly headerLine: number | null;
  readonly timeFormat: TimeFormat;
  /** How dates were read, where there are any. */
  readonly dateOrder: "year-first" | "day-first" | "month-first" | null;
  /** As written; kelvin only where the file says so. */
  readonly unit: FileUnit;
  /** Median step between used rows, seconds. */
  readonly intervalSeconds: number;
  /**
   * Wall-clock time of the first used reading as if in UTC, ms since 1970; on 1970-01-01 where
   * only a clock is written, in 1970 where dates have no year; null when only elapsed.
   */
  readonly startWallClock: number | null;
  readonly notices: readonly Notice[];
  readonly probes: readonly Series[];
}

/** What the person may say about a file; everything else is found in the file. */
export interface ReadingOptions {
  /** Only this heading (or these) is a temperature. */
  readonly columns?: readonly string[];
  /** Roles by heading; unnamed probes are guessed from the heading, else `food`. */
  readonly roles?: ReadonlyMap<string, "food" | "bath" | "room">;
  readonly unit?: TemperatureUnit;
  readonly dateOrder?: "day-first" | "month-first";
  readonly decimal?: "." | ",";
  /** Spacing of a file without times. */
  readonly intervalSeconds?: number;
  /** Called now and then with the bytes read so far. */
  readonly onProgress?: (bytesRead: number) => void;
}

/** Where the bytes come from; the shell opens, the core only reads. */
export interface ByteSource {
  readonly name: string;
  readonly chunks: AsyncIterable<Uint8Array>;
}
