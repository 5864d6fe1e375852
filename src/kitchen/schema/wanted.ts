/** What each kind of value asks for, in words, with an example: said once, for every section. */
import type { Wanted } from "./leaf.ts";

const wanted = (expected: string, example: string): Wanted => ({ expected, example });

export const nameWanted = wanted(
  "a name of at most 60 letters on one line",
  "name: Pen thermometer",
);
export const headingWanted = wanted("a column's name as the file has it", '"Jar"');
export const noteWanted = wanted("a text", "notes: lid opened twice");
export const altitudeWanted = wanted(
  "a height above sea level from -450 to 6000 m",
  "1450 m or 4760 ft",
);
export const pressureWanted = wanted(
  "an air pressure and whether it is read on the spot (station) or from a forecast (sea-level)",
  '"851 hPa station" or "1013 hPa sea-level"',
);
export const roomWanted = wanted(
  "two temperatures of a room (at most 60 degC), the lower first",
  "17..24 or 63F..75F",
);
export const unitWanted = wanted("C or F", "unit: C");
export const temperatureWanted = wanted("a temperature from -40 to 150 degC", "38 or 100.4F");
export const readingWanted = wanted("what the thermometer showed", "0.3, or 95.2, or 203.4F");
export const stepWanted = wanted("a step of temperature above 0", "0.1 or 0.2F");
export const accuracyWanted = wanted("how far it may be off, above 0", "accuracy: 0.5");
export const uncertaintyWanted = wanted("a standard uncertainty, 0 or more", "uncertainty: 0.05");
export const dateWanted = wanted("a date as year-month-day", "2026-10-03");
export const clockWanted = wanted("a date and a time", "starts: 2026-10-03 22:10");
export const yesNoWanted = wanted("yes or no", "confirmed: yes");
export const volumeWanted = wanted("the volume of one vessel", "volume: 0.5 L");
export const countWanted = wanted("how many there are, a whole number", "count: 6");
export const hoursWanted = wanted("hours, more than 0 and at most 240", "hours: 20h");
export const generationWanted = wanted(
  "a whole number from 1 (set with a fresh starter) to 1000",
  "generation: 2",
);
export const starterWanted = wanted(
  "the starter as a part of the whole, from 0 % to 100 %",
  "starter: 5 %",
);
export const intervalWanted = wanted("the time between two readings", "interval: 30s");
export const pathWanted = wanted(
  "a path inside the kitchen folder, with forward slashes and without ..",
  "file: readings/night.csv",
);
export const shaWanted = wanted(
  "the file's SHA-256, 64 hexadecimal digits, as holdband add writes it",
  "",
);
export const idWanted = wanted("a name of a thing in this kitchen", "");
export const oneOf = (words: readonly string[], key: string): Wanted => ({
  ...wanted(`one of: ${words.join(", ")}`, `${key}: ${words[0] ?? ""}`),
  words,
});
