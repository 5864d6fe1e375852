/** Lengths of time and clock times as text. Clock times are written as the logger's clock read them. */
import type { ReadingsFile } from "../readings/readings-file.ts";

/** "7 h 40 min", "24 h", "40 min", "under a minute". */
export const duration = (minutes: number, space: string): string => {
  const whole = Math.round(minutes);
  if (whole < 1) return minutes > 0 ? "under a minute" : `0${space}min`;
  const hours = Math.floor(whole / 60);
  const rest = whole - hours * 60;
  if (hours === 0) return `${rest}${space}min`;
  return rest === 0 ? `${hours}${space}h` : `${hours}${space}h${space}${rest}${space}min`;
};

const millisecondsPerMinute = 60_000;

/** "22:05", or null where the file tells no clock time. */
export const clockTime = (startWallClock: number | null, minute: number): string | null =>
  startWallClock === null
    ? null
    : new Date(startWallClock + minute * millisecondsPerMinute).toISOString().slice(11, 16);

/** When a file's first reading was taken, by its clock; without the date, or null, where that is not known. */
export const firstReading = ({
  startWallClock,
  probes,
}: Pick<ReadingsFile, "startWallClock" | "probes">): string | null => {
  const minute = Math.min(...probes.map(({ minutes }) => minutes[0] ?? 0));
  return calendarDay(startWallClock) === null
    ? clockTime(startWallClock, minute)
    : dateAndClock(startWallClock, minute);
};

/** "2026-03-14 22:05", or null. */
export const dateAndClock = (startWallClock: number | null, minute: number): string | null =>
  startWallClock === null
    ? null
    : new Date(startWallClock + minute * millisecondsPerMinute)
        .toISOString()
        .slice(0, 16)
        .replace("T", " ");

/**
 * A clock without a date, or a date without a year, is counted from 1970
 * (readings-file.ts); another logger's may lie a day before that.
 */
const firstKnownYear = "1971";

/** "2026-03-14"; null where the file tells no date, or one without its year. */
export const calendarDay = (startWallClock: number | null): string | null => {
  const day = dateAndClock(startWallClock, 0)?.slice(0, 10);
  return day === undefined || day < firstKnownYear ? null : day;
};

/** "begun 2026-03-14 21:37", "begun 21:37", or null. */
export const begunText = (startWallClock: number | null): string | null => {
  const clock = clockTime(startWallClock, 0);
  if (clock === null) return null;
  const day = calendarDay(startWallClock);
  return day === null ? `begun ${clock}` : `begun ${day} ${clock}`;
};
