import type { ThermometerCheck } from "./thermometer.ts";

const millisecondsPerDay = 86_400_000;
const isoDate = /^(\d{4})-(\d{2})-(\d{2})$/;

/** Day number of an ISO date (2024-02-29); null for a day no calendar has. */
const dayNumber = (date: string): number | null => {
  const parts = isoDate.exec(date);
  if (parts === null) return null;
  const milliseconds = Date.UTC(Number(parts[1]), Number(parts[2]) - 1, Number(parts[3]));
  // Date.UTC carries 30 February over into March, and years below 100 into the 1900s.
  const same = new Date(milliseconds).toISOString().startsWith(date);
  return same ? milliseconds / millisecondsPerDay : null;
};

/** Whole days from one ISO date to another; negative when that was before. null when either cannot be. */
export const daysBetween = (from: string, to: string): number | null => {
  const first = dayNumber(from);
  const last = dayNumber(to);
  return first === null || last === null ? null : last - first;
};

/**
 * The newest date among checks, with the days from then to `today` (both ISO
 * dates; negative when a check is dated later). null where none has a date that
 * can be, or `today` cannot.
 */
export const lastChecked = (
  checks: readonly ThermometerCheck[],
  today: string,
): { readonly date: string; readonly daysAgo: number } | null => {
  let newest: { date: string; daysAgo: number } | null = null;
  for (const { date } of checks) {
    if (date === null) continue;
    const daysAgo = daysBetween(date, today);
    if (daysAgo !== null && (newest === null || daysAgo < newest.daysAgo))
      newest = { date, daysAgo };
  }
  return newest;
};
