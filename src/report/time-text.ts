/** Lengths of time and clock times as text. Clock times are written as the logger's clock read them. */

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

/** "2026-03-14 22:05", or null. */
export const dateAndClock = (startWallClock: number | null, minute: number): string | null =>
  startWallClock === null
    ? null
    : new Date(startWallClock + minute * millisecondsPerMinute)
        .toISOString()
        .slice(0, 16)
        .replace("T", " ");
