/**
 * Days from 1970-01-01 to a date of the Gregorian calendar, by arithmetic on
 * whole days, without Date. The year is taken to begin in March, so that the
 * leap day is its last.
 */
export const daysFromCivil = (year: number, month: number, day: number): number => {
  const shifted = month <= 2 ? year - 1 : year;
  const era = Math.floor(shifted / 400);
  const yearOfEra = shifted - era * 400;
  const dayOfYear = Math.floor((153 * (month > 2 ? month - 3 : month + 9) + 2) / 5) + day - 1;
  const leapDays = Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100);
  return era * 146097 + yearOfEra * 365 + leapDays + dayOfYear - 719468;
};

const isLeap = (year: number): boolean => (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;

const lengths = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** Whether the date exists. */
export const isCivil = (year: number, month: number, day: number): boolean => {
  const length = lengths[month - 1];
  if (length === undefined || day < 1) return false;
  return day <= (month === 2 && isLeap(year) ? 29 : length);
};

/** A year written with two digits: 69..99 are 1969..1999, 00..68 are 2000..2068 (POSIX strptime, %y). */
export const fullYear = (year: number, digits: number): number => {
  if (digits > 2) return year;
  return year >= 69 ? 1900 + year : 2000 + year;
};
