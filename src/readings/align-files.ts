import { done, failed, type Outcome } from "../problem.ts";
import type { ReadingsFile } from "./readings-file.ts";
import type { Series } from "./series.ts";
import { placeByOverlap, type ClockSpan } from "./place-by-overlap.ts";

const minuteMs = 60_000;

/**
 * Puts the files of loggers that ran together on one clock: afterwards the
 * minutes of every probe count from the earliest first reading of all files,
 * and every file's `startWallClock` is the wall clock at minute 0.
 *
 * Each file's own clock is taken as right; loggers set differently are not
 * mended, since nothing in the readings tells by how much. A file that has only
 * a clock, or dates without a year, is put on the day or into the year in which
 * it overlaps the others most (see placeByOverlap).
 *
 * @param startsAt one per file: what the person says of its first reading, wall
 *   clock as if in UTC, ms since 1970; it counts more than the file's own clock.
 *   null where nothing was said
 * @returns the files in their order; `clock-needed` where a file has no clock and
 *   none was said, `loggers-apart` where some file ran at another time than all others
 */
export const alignFiles = (
  files: readonly ReadingsFile[],
  startsAt: readonly (number | null)[],
): Outcome<readonly ReadingsFile[]> => {
  const spans: ClockSpan[] = [];
  for (const [at, file] of files.entries()) {
    const said = startsAt[at] ?? null;
    const start = said ?? file.startWallClock;
    if (start === null) return failed("clock-needed", { file: file.name });
    const first = firstMinute(file);
    const end = start + (lastMinute(file) - first) * minuteMs;
    spans.push({ start, end, known: said === null ? knownOf(file) : "date" });
  }
  const placed = placeByOverlap(spans);
  const apart = firstApart(placed);
  if (apart !== null) {
    const [before, after] = apart;
    return failed("loggers-apart", {
      first: files[before]!.name,
      firstSpan: spanText(placed[before]!),
      second: files[after]!.name,
      secondSpan: spanText(placed[after]!),
    });
  }
  const zero = Math.min(...placed.map(({ start }) => start));
  return done(
    files.map((file, at) => {
      const by = (placed[at]!.start - zero) / minuteMs - firstMinute(file);
      return { ...file, startWallClock: zero, probes: shifted(file.probes, by) };
    }),
  );
};

/** What the file's clock leaves open. */
const knownOf = (file: ReadingsFile): ClockSpan["known"] => {
  if (file.timeFormat === "clock") return "clock";
  return file.notices.some(({ code }) => code === "year-unknown") ? "day and month" : "date";
};

const firstMinute = ({ probes }: ReadingsFile): number =>
  Math.min(...probes.map(({ minutes }) => minutes[0] ?? Infinity));

const lastMinute = ({ probes }: ReadingsFile): number =>
  Math.max(...probes.map(({ minutes }) => minutes.at(-1) ?? -Infinity));

/** Probes that shared their minutes go on sharing them. */
const shifted = (probes: readonly Series[], by: number): readonly Series[] => {
  if (by === 0) return probes;
  const moved = new Map<Float64Array, Float64Array>();
  return probes.map((probe) => {
    const minutes = moved.get(probe.minutes) ?? probe.minutes.map((minute) => minute + by);
    moved.set(probe.minutes, minutes);
    return { ...probe, minutes };
  });
};

/** Two neighbours in time with a stretch between them in which no logger ran; null where there is none. */
const firstApart = (spans: readonly ClockSpan[]): readonly [number, number] | null => {
  const order = [...spans.keys()].toSorted((a, b) => spans[a]!.start - spans[b]!.start);
  let latest = order[0];
  if (latest === undefined) return null;
  for (const at of order.slice(1)) {
    if (spans[at]!.start > spans[latest]!.end) return [latest, at];
    if (spans[at]!.end > spans[latest]!.end) latest = at;
  }
  return null;
};

/** "2026-02-14 22:00 to 2026-02-15 07:10"; without the date where only the clock is known. */
const spanText = ({ start, end, known }: ClockSpan): string => {
  const from = known === "clock" ? 11 : known === "date" ? 0 : 5;
  const text = (time: number) => new Date(time).toISOString().slice(from, 16).replace("T", " ");
  return `${text(start)} to ${text(end)}`;
};
