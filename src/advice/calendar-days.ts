/** Days of the calendar as ISO dates, "2026-03-14": they compare as texts. */

const millisecondsPerDay = 86_400_000;

const atOf = (day: string): number => Date.parse(`${day}T00:00:00Z`);

/** Days from one to another; negative where the other comes first. */
export const daysBetween = (from: string, to: string): number =>
  Math.round((atOf(to) - atOf(from)) / millisecondsPerDay);

/** Whole calendar months from one day to a later one: 31 January to 28 February is none. */
export const monthsBetween = (from: string, to: string): number => {
  const [year = 0, month = 0, day = 0] = from.split("-").map(Number);
  const [laterYear = 0, laterMonth = 0, laterDay = 0] = to.split("-").map(Number);
  return (laterYear - year) * 12 + laterMonth - month - (laterDay < day ? 1 : 0);
};

/** A clock without its year counts from 1970, and another logger's may lie a day before that. */
const firstKnownYear = "1971";

/** The day of a wall-clock time as if in UTC, ms since 1970; null where that tells no date. */
export const dayOf = (startedAt: number | null): string | null => {
  const day = startedAt === null ? "" : new Date(startedAt).toISOString().slice(0, 10);
  return day < firstKnownYear ? null : day;
};
