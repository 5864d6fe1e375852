import { notice, type Notice } from "../../notice.ts";
import { done, failed, type Outcome } from "../../problem.ts";
import { growableFloats } from "../rows/growable.ts";
import { createLineRecord } from "./line-record.ts";
import type { TimeHeading } from "./time-heading.ts";
import { mendedNotices } from "./mend.ts";
import { fitsKind, type StampKind } from "./stamp-kind.ts";
import { createStampReader } from "./stamp.ts";
import type { FoundTimes, TimeAccumulator, TimeOptions } from "./time-types.ts";
import { clockPeriod, unwrapClock } from "./unwrap.ts";

const day = 86400;
const hour = 3600;

/** What the cells without a date turn out to be. */
export type UndatedReading = "clock" | "elapsed" | "minutes-seconds" | "undecidable";

/** What is known of a column of times without dates when its last row is in. */
export interface UndatedFacts {
  /** Some cell counts days, or is minutes and seconds beyond doubt. */
  readonly days: boolean;
  readonly minutesSeconds: boolean;
  /** No cell has more than two parts, as 10:30. */
  readonly twoPart: boolean;
  readonly half: boolean;
  /** The largest value, seconds, two parts taken as hours and minutes. */
  readonly largest: number;
  /** The longest step back, seconds, likewise. */
  readonly longestBack: number;
}

const readTwoParts = (facts: UndatedFacts, heading: TimeHeading): UndatedReading | null => {
  if (heading.parts === "minutes-seconds") return "minutes-seconds";
  if (heading.parts === "hours-minutes" || facts.largest <= day) return null;
  if (facts.largest >= 60 * hour) return "minutes-seconds";
  if (facts.longestBack === 0) return "elapsed";
  // Back from 59 to 00: the hour is not shown. Else 26:30 may be hours or minutes.
  return facts.longestBack > 30 * hour ? "minutes-seconds" : "undecidable";
};

/**
 * Clock or elapsed time: by what the cells show, then by the heading, then by
 * values beyond 24 hours; else a clock. Two parts (10:30) are hours and
 * minutes unless the heading or values beyond 59 say minutes and seconds;
 * with values of 24 to 59 they are hours where they rise to the end (in minutes
 * and seconds the file would end before its first hour, and no test of a hold
 * is that short); else it cannot be told.
 */
export const readUndated = (facts: UndatedFacts, heading: TimeHeading): UndatedReading => {
  if (facts.half) return "clock";
  if (facts.minutesSeconds) return "minutes-seconds";
  if (facts.days) return "elapsed";
  const twoParts = facts.twoPart ? readTwoParts(facts, heading) : null;
  if (twoParts !== null) return twoParts;
  return heading.elapsed || facts.largest > day ? "elapsed" : "clock";
};

/** Two parts beyond 24 that no heading explains. */
const decided = ({ parts }: TimeHeading, { twoPart, days, largest }: UndatedFacts): boolean =>
  twoPart && !days && parts === null && largest > day;

const decidedNotice = (found: string): Notice =>
  notice("time-decided", {
    found,
    reading: "hours and minutes",
    why: "they rise to the end, and as minutes and seconds the whole file would be under an hour",
  });

const longestBackIn = (seconds: Float64Array): number => {
  let longest = 0;
  for (let row = 1; row < seconds.length; row++)
    longest = Math.max(longest, seconds[row - 1]! - seconds[row]!);
  return longest;
};

const elapsedTimes = (seconds: Float64Array, largest: number, period: number): FoundTimes => {
  // A display that drops what is beyond its first part starts again from zero.
  if (largest <= period && longestBackIn(seconds) > period / 2) unwrapClock(seconds, period);
  return { format: "elapsed-clock", seconds, startWallClock: null, dateOrder: null, notices: [] };
};

/** Takes times that have no date: a clock's, or elapsed ones written like a clock's. */
export const createUndatedAccumulator = (
  kind: StampKind,
  heading: TimeHeading,
  options: TimeOptions,
): TimeAccumulator => {
  const reader = createStampReader();
  const stamp = reader.stamp;
  const column = growableFloats();
  const lines = createLineRecord();
  let days = false;
  let minutesSeconds = false;
  let twoPart = true;
  let largest = 0;
  let found = "";
  let greatest = "";
  let firstOffset = 0;

  const add = (cells: readonly string[], line: number): boolean => {
    if (!reader.read(cells) || !fitsKind(stamp, kind)) return false;
    const offset = kind.zoned ? stamp.offset : 0;
    if (column.length === 0) [found, firstOffset] = [cells.join(" "), offset];
    days ||= stamp.layout.days >= 0;
    minutesSeconds ||= stamp.layout.hour < 0;
    twoPart &&= stamp.layout.twoPart;
    if (stamp.seconds > largest) [largest, greatest] = [stamp.seconds, cells.join(" ")];
    lines.add(column.length, line);
    column.push(stamp.seconds - offset);
    return true;
  };
  const undecidable = (): Outcome<never> =>
    failed("time-undecidable", { file: options.file ?? "", line: lines.lineOf(0), found });

  const clockTimes = (seconds: Float64Array): Outcome<FoundTimes> => {
    const period = kind.half ? day : clockPeriod(seconds);
    if (period === "undecidable") return undecidable();
    const start = seconds[0]! + firstOffset;
    unwrapClock(seconds, period);
    const notices = kind.zoned || period !== day ? [] : mendedNotices(seconds, lines);
    const startWallClock = period === day ? start * 1000 : null;
    return done({ format: "clock", seconds, startWallClock, dateOrder: null, notices });
  };
  const finish = (): Outcome<FoundTimes> => {
    const seconds = column.view();
    const longestBack = longestBackIn(seconds);
    const facts = { days, minutesSeconds, twoPart, half: kind.half, largest, longestBack };
    const reading = column.length === 0 ? "undecidable" : readUndated(facts, heading);
    if (reading === "undecidable") return undecidable();
    if (reading === "clock") return clockTimes(seconds);
    if (reading === "elapsed") {
      const notices = decided(heading, facts) ? [decidedNotice(greatest)] : [];
      return done({ ...elapsedTimes(seconds, largest, day), notices });
    }
    if (!minutesSeconds) for (let row = 0; row < seconds.length; row++) seconds[row]! /= 60;
    return done(elapsedTimes(seconds, minutesSeconds ? largest : largest / 60, hour));
  };
  return { add, finish };
};
