/**
 * Values as a cook writes them, beyond temperatures and lengths of time:
 * heights, air pressures, volumes, dates, yes and no. A text that cannot be
 * read, or says what cannot be, gives null.
 */
import type { TemperatureUnit } from "../../quantity.ts";
import {
  parseDuration,
  parseNumber,
  parseRange,
  parseTemperature,
  parseTemperatureDifference,
} from "../../quantity-text.ts";
import type { BoilingPlace } from "../../thermometer/thermometer.ts";
import type { TemperatureRange } from "../kitchen.ts";

const within = (value: number | null, low: number, high: number): number | null =>
  value !== null && value >= low && value <= high ? value : null;

/** Number and unit of "1450 m"; the unit is "" where none was written. */
const withUnit = (text: string): { value: number; unit: string } | null => {
  const match = /^(.*?)\s*([a-z]*)$/i.exec(text.trim());
  const value = parseNumber(match?.[1] ?? "");
  return value === null ? null : { value, unit: (match?.[2] ?? "").toLowerCase() };
};

const scaled = (text: string, scales: ReadonlyMap<string, number>): number | null => {
  const written = withUnit(text);
  const scale = scales.get(written?.unit ?? "-");
  return written === null || scale === undefined ? null : written.value * scale;
};

/** 1 ft = 0.3048 m, exact (NIST SP 811, appendix B.8). */
const metresIn = new Map([
  ["", 1],
  ["m", 1],
  ["ft", 0.3048],
]);

/** "1450 m", "4760 ft", "1450": metres above sea level, where people live. */
export const readAltitude = (text: string): number | null =>
  within(scaled(text, metresIn), -450, 6000);

/** 1 inHg = 33.863 89 hPa, 1 mmHg = 1.333 224 hPa (NIST SP 811, appendix B.8). */
const hectopascalIn = new Map([
  ["hpa", 1],
  ["mbar", 1],
  ["kpa", 10],
  ["inhg", 33.86389],
  ["mmhg", 1.333224],
]);

/** "851 hPa station" or "1013 hPa sea-level": the last word says how it is meant. */
export const readPressure = (text: string): NonNullable<BoilingPlace["pressure"]> | null => {
  const match = /^(.*?)\s+(station|sea[- ]level)$/i.exec(text.trim());
  const hectopascal = within(scaled(match?.[1] ?? "", hectopascalIn), 400, 1100);
  if (match === null || hectopascal === null) return null;
  return { hectopascal, reduced: /^station$/i.test(match[2] ?? "") ? "station" : "sea-level" };
};

/** 1 US quart = 0.946 352 9 L, 1 US gallon = 3.785 412 L (NIST SP 811, appendix B.8). */
const litresIn = new Map([
  ["", 1],
  ["l", 1],
  ["ml", 0.001],
  ["cl", 0.01],
  ["dl", 0.1],
  ["qt", 0.9463529],
  ["gal", 3.785412],
]);

/** "0.5 L", "500 ml", "1 qt": litres, more than nothing. */
export const readVolume = (text: string): number | null => {
  const litres = scaled(text, litresIn);
  return litres !== null && litres > 0 ? within(litres, 0, 10_000) : null;
};

export const readCount = (text: string): number | null =>
  /^[1-9]\d{0,4}$/.test(text.trim()) ? Number(text) : null;

/** A batch's generation: 1 with a fresh starter, then 2, 3, up to 1000. */
export const readGeneration = (text: string): number | null =>
  /^\d{1,4}$/.test(text.trim()) ? within(Number(text), 1, 1000) : null;

/** "5 %": 0.05. Without its sign 5 could be parts of a hundred or of one, so it is not read. */
export const readPart = (text: string): number | null => {
  const percent = /^(.*?)\s*%$/.exec(text.trim())?.[1];
  const part = within(parseNumber(percent ?? ""), 0, 100);
  return part === null ? null : Math.round(part * 1e10) / 1e12;
};

export const readYesNo = (text: string): boolean | null => {
  const word = text.trim().toLowerCase();
  if (word === "yes" || word === "true") return true;
  return word === "no" || word === "false" ? false : null;
};

export const readUnit = (text: string): TemperatureUnit | null => {
  const letter = /^(?:°|deg)?([CF])$/i.exec(text.trim())?.[1]?.toUpperCase();
  return letter === undefined ? null : letter === "F" ? "degF" : "degC";
};

/** Of a food or a room; a typing slip such as 380 is nobody's kitchen. */
export const readTemperature = (text: string): number | null =>
  within(parseTemperature(text)?.celsius ?? null, -40, 150);

/** What a thermometer showed, however wrong: checks are questioned later, not refused here. */
export const readReading = (text: string): number | null =>
  within(parseTemperature(text)?.celsius ?? null, -100, 500);

export const readStep = (text: string): number | null => {
  const step = parseTemperatureDifference(text);
  return step !== null && step > 0 ? within(step, 0, 50) : null;
};

export const readUncertainty = (text: string): number | null =>
  within(parseTemperatureDifference(text), 0, 50);

/** Of a room: "17..24" or "63F..75F", the lower end first. */
export const readRoom = (text: string): TemperatureRange | null => {
  const range = parseRange(text);
  const low = within(range?.low.celsius ?? null, -40, 60);
  const high = within(range?.high.celsius ?? null, -40, 60);
  return low === null || high === null || low > high ? null : { low, high };
};

/** Hours; "20h", "90 min", or a bare number of hours, up to ten days. */
export const readHours = (text: string): number | null => {
  const seconds = parseDuration(text, "h");
  return seconds !== null && seconds > 0 ? within(seconds / 3600, 0, 240) : null;
};

/** Seconds between readings; "30s", "1min", or a bare number of seconds. */
export const readInterval = (text: string): number | null => {
  const seconds = parseDuration(text, "s");
  return seconds !== null && seconds > 0 ? within(seconds, 0, 86_400) : null;
};

const clockForm = /^(\d{4}-\d\d-\d\d)[ T]+(\d{1,2}):(\d\d)(?::(\d\d))?$/;

/** "2026-10-03": the same text, where there is such a day. */
export const readDate = (text: string): string | null => {
  const day = text.trim();
  if (!/^(?:19|20|21)\d\d-\d\d-\d\d$/.test(day)) return null;
  const [year = 0, month = 0, date = 0] = day.split("-").map(Number);
  const there = new Date(Date.UTC(year, month - 1, date)).toISOString().startsWith(day);
  return there ? day : null;
};

/** "2026-10-03 22:10" by the wall clock, as if in UTC, ms since 1970. */
export const readClock = (text: string): number | null => {
  const match = clockForm.exec(text.trim());
  const day = readDate(match?.[1] ?? "");
  if (match === null || day === null) return null;
  const [hour, minute, second] = [match[2], match[3], match[4] ?? "0"].map(Number);
  if (hour! > 23 || minute! > 59 || second! > 59) return null;
  return Date.parse(`${day}T00:00:00Z`) + ((hour! * 60 + minute!) * 60 + second!) * 1000;
};
