/** Wall-clock seconds (from 1970 as if in UTC) to text, without Date. */
const day = 86_400;

const two = (value: number): string => String(value).padStart(2, "0");

/** Days from 1970-01-01 of a wall-clock time, and its seconds from midnight. */
export const dayOf = (seconds: number): number => Math.floor(seconds / day);
export const ofDay = (seconds: number): number => seconds - dayOf(seconds) * day;

/** "2026-10-03": the inverse of `daysFromCivil`, with the year begun in March likewise. */
export const dateText = (days: number): string => {
  const shifted = days + 719_468;
  const era = Math.floor(shifted / 146_097);
  const dayOfEra = shifted - era * 146_097;
  const leapDays =
    Math.floor(dayOfEra / 1460) - Math.floor(dayOfEra / 36_524) + Math.floor(dayOfEra / 146_096);
  const yearOfEra = Math.floor((dayOfEra - leapDays) / 365);
  const dayOfYear =
    dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const marchMonth = Math.floor((5 * dayOfYear + 2) / 153);
  const date = dayOfYear - Math.floor((153 * marchMonth + 2) / 5) + 1;
  const month = marchMonth < 10 ? marchMonth + 3 : marchMonth - 9;
  const year = yearOfEra + era * 400 + (month <= 2 ? 1 : 0);
  return `${String(year).padStart(4, "0")}-${two(month)}-${two(date)}`;
};

/** "22:30", or "22:30:15" where `withSeconds` or where there are any. */
export const clockText = (seconds: number, withSeconds = seconds % 60 !== 0): string => {
  const rest = ofDay(seconds);
  const shown = `${two(Math.floor(rest / 3600))}:${two(Math.floor((rest % 3600) / 60))}`;
  return withSeconds ? `${shown}:${two(rest % 60)}` : shown;
};

/** Length of time in words: "40 min", "2 h 5 min". */
export const lengthText = (seconds: number): string => {
  const minutes = Math.round(Math.abs(seconds) / 60);
  if (minutes < 60) return `${minutes} min`;
  const rest = minutes % 60;
  return `${Math.floor(minutes / 60)} h${rest === 0 ? "" : ` ${rest} min`}`;
};
