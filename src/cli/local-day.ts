const two = (value: number): string => String(value).padStart(2, "0");

/** The day on the wall calendar where the program runs, as ISO date. */
export const localDay = (now: Date): string =>
  `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
