import { notice, type Notice } from "../../notice.ts";
import type { LineRecord } from "./line-record.ts";
import { usualStep } from "./steps.ts";

/** One jump taken out: the first row after it, and by how much the clock had moved. */
export interface ClockJump {
  readonly row: number;
  readonly seconds: number;
}

const hour = 3600;
/** Clocks change between 23:00 and 04:00 local time everywhere (time zone database, from memory). */
const changeoverHours = new Set([0, 1, 2, 3]);
/** Beyond this usual step, or below this share of usual steps, an hour does not stand out. */
const longestUsual = 1200;
const leastShare = 0.8;

/** Whether the clock skipped a whole hour between two times of day. */
const skipsHour = (before: number, after: number): boolean => {
  const skipped = Math.floor(before / hour) + 1;
  const reached = Math.floor(after / hour) * hour;
  return changeoverHours.has(skipped % 24) && reached === (skipped + 1) * hour;
};

/** Whether the clock went back over an hour it had just shown. */
const repeatsHour = (before: number, after: number): boolean => {
  const repeated = Math.floor(after / hour);
  const shown = ((repeated % 24) + 24) % 24;
  return (changeoverHours.has(shown) || shown === 23) && Math.floor(before / hour) === repeated;
};

/** The jump between two shown times that are one step apart: +-3600 s, or 0. */
const jumpBetween = (before: number, after: number, median: number): number => {
  const extra = after - before - median;
  const tolerance = median / 2 + 1;
  if (Math.abs(extra - hour) <= tolerance && skipsHour(before, after)) return hour;
  if (Math.abs(extra + hour) <= tolerance && repeatsHour(before, after)) return -hour;
  return 0;
};

/** The stamp after those equal to that of `row`; one usual step on where there is none. */
const nextStamp = (seconds: Float64Array, row: number, usual: number): number => {
  let next = row + 1;
  while (seconds[next] === seconds[row]) next++;
  return seconds[next] ?? seconds[row]! + usual;
};

/** Takes the jumps out, in place; `usual` is the usual step. */
const takeOut = (seconds: Float64Array, usual: number): readonly ClockJump[] => {
  const jumps: ClockJump[] = [];
  let shift = 0;
  let before = seconds[0]!;
  for (let row = 1; row < seconds.length; row++) {
    const shown = seconds[row]!;
    const jump = jumpBetween(before, shown, usual);
    // Where the rows do not go on at the usual step, a single row is out of place.
    const next = jump === 0 ? 0 : nextStamp(seconds, row, usual) - shown - usual;
    if (jump !== 0 && Math.abs(next) <= usual / 2 + 1) {
      jumps.push({ row, seconds: jump });
      shift += jump;
    }
    before = shown;
    seconds[row] = shown - shift;
  }
  return jumps;
};

/**
 * Takes out, in place, the jumps of one hour that summer time makes in local
 * wall clock times (seconds, midnight at multiples of 86400): forward over a
 * skipped hour or back over a repeated one, at night, in otherwise regular
 * readings at most 20 minutes apart. Anything else, such as a true gap of
 * another length or at another hour, stays. Returns the jumps.
 */
export const mendClockJumps = (seconds: Float64Array): readonly ClockJump[] => {
  const { median, share } = usualStep(seconds);
  return median <= longestUsual && share >= leastShare ? takeOut(seconds, median) : [];
};

/** Mends the jumps in place and tells of each, with its line. */
export const mendedNotices = (seconds: Float64Array, lines: LineRecord): readonly Notice[] =>
  mendClockJumps(seconds).map((jump) =>
    notice("clock-jump-mended", { line: lines.lineOf(jump.row), jumpMinutes: jump.seconds / 60 }),
  );
