/** A whole text of typed lines, as it comes through a pipe. */
import { done, failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import type { TemperatureUnit } from "../../quantity.ts";
import { isBlankLine, readTypedLine } from "./typed-line.ts";
import { addReading, emptyLog } from "./typed-log.ts";
import type { TypedLine, TypedLog } from "./typed-types.ts";
import { unread } from "./unread.ts";

export interface PipedOptions {
  readonly probes: readonly string[];
  /** Unit of numbers without a letter, where it was said. */
  readonly unit: TemperatureUnit | null;
  /** Their unit where nobody said it and no line has a letter. */
  readonly usualUnit: TemperatureUnit;
  /** Date of the first reading, days from 1970-01-01, where it was said. */
  readonly firstDay: number | null;
  /** Wall clock, seconds from 1970 as if in UTC. */
  readonly now: number;
}

interface Numbered {
  readonly line: number;
  readonly typed: TypedLine;
}

/** Nobody types more by hand; what is longer comes from a logger. */
const most = 10_000;

const readLines = (text: string, probes: readonly string[]): Outcome<readonly Numbered[]> => {
  const lines: Numbered[] = [];
  for (const [at, written] of text
    .replace(/^\uFEFF/u, "")
    .split(/\r\n?|\n/u)
    .entries()) {
    if (isBlankLine(written)) continue;
    if (lines.length === most)
      return unread(
        at + 1,
        `up to ${most} typed readings`,
        written,
        "Give a logger's file to add.",
      );
    const read = readTypedLine(written, probes, at + 1);
    if (!read.ok) return read;
    lines.push({ line: at + 1, typed: read.value });
  }
  return done(lines);
};

/** The one unit whose letter is written anywhere, if there is just one. */
const writtenUnit = (lines: readonly Numbered[]): TemperatureUnit | null => {
  const written = lines.flatMap(({ typed }) => typed.values.flatMap((value) => value?.unit ?? []));
  return new Set(written).size === 1 ? (written[0] ?? null) : null;
};

const fewest = 2;

const collect = (lines: readonly Numbered[], empty: TypedLog, now: number): Outcome<TypedLog> => {
  let log = empty;
  for (const { line, typed } of lines) {
    const placed = addReading(log, typed, now, line);
    if (placed.kind === "refused") return { ok: false, problem: placed.problem };
    // A date nobody said is moved without asking: the night must lie in the past.
    const doubt = placed.doubts.find(({ kind }) => kind !== "a-day-back");
    if (doubt !== undefined && !typed.confirmed) return { ok: false, problem: doubt.problem };
    log = placed.log;
  }
  return done(log);
};

/**
 * Reads lines such as `22:30 41.2`; blank lines and comments are passed over.
 * All or nothing: the first line that cannot be read, or is questioned and has
 * no `!` at its end, is the problem, with its number. The unit: as said, else
 * the letter that stands anywhere in the text, else the usual one.
 */
export const pipedReadings = (text: string, options: PipedOptions): Outcome<TypedLog> => {
  const { probes, unit, usualUnit, firstDay, now } = options;
  const lines = readLines(text, probes);
  if (!lines.ok) return lines;
  if (lines.value.length < fewest) {
    return failed("reading-unread", {
      line: null,
      expected: "at least two readings",
      found: String(lines.value.length),
      advice: "Write one on each line, like 22:30 41.2.",
    });
  }
  const found = unit ?? writtenUnit(lines.value) ?? usualUnit;
  return collect(lines.value, emptyLog(probes, found, firstDay, false), now);
};
