/** The time at the beginning of a typed line. */
import { parseDuration } from "../../quantity-text.ts";
import { daysFromCivil, isCivil } from "../times/civil-days.ts";
import type { TypedTime } from "./typed-types.ts";

/** A time and what follows it, or why there is none. */
export type TimeFinding =
  | { readonly ok: true; readonly time: TypedTime; readonly rest: string }
  | { readonly ok: false; readonly expected: string; readonly advice: string };

const usual = "a time and a temperature";
const refused = (advice: string, expected = usual): TimeFinding => ({
  ok: false,
  expected,
  advice,
});
const found = (time: TypedTime, text: string, length: number): TimeFinding => ({
  ok: true,
  time,
  rest: text.slice(length).trim(),
});

const end = String.raw`(?=\s|$)`;
const nowForm = new RegExp(`^now${end}`, "iu");
const laterForm = new RegExp(
  String.raw`^\+\s*(\d+:[0-5]\d|\d+h[0-5]?\d(?:min)?|\d+(?:[.,]\d+)?\s*[a-z]*)${end}`,
  "iu",
);
const halfForm = new RegExp(
  String.raw`^(\d{1,2})(?:[:h](\d{2})(?::(\d{2}))?)?\s*([ap])\.?\s?m\.?${end}`,
  "iu",
);
const clockForm = new RegExp(String.raw`^(\d{1,2})(?:h|[:h](\d{2})(?::(\d{2}))?)${end}`, "iu");
const dottedForm = new RegExp(String.raw`^(\d{1,2})[.,](\d{2})(\s*[ap]\.?m\.?)?\s+[-+\d.,]`, "iu");
const solidForm = new RegExp(String.raw`^([01]?\d|2[0-3])([0-5]\d)\s+[-+\d.,]`, "u");
const dateForm = /^(\d{4})-(\d{1,2})-(\d{1,2})(?:T|\s+|$)/u;
const otherDateForm = /^\d{1,4}[./-]\d{1,2}[./-](?:\d{1,4})?/u;

/** Seconds of "+15" (minutes), "+1:30", "+1h30", "+90s"; null for another unit. */
const laterSeconds = (typed: string): number | null => {
  const mixed = /^(\d+)(?::|h)(\d{1,2})(?:min)?$/iu.exec(typed);
  if (mixed !== null) return Number(mixed[1]) * 3600 + Number(mixed[2]) * 60;
  return parseDuration(typed, "min");
};

const later = (text: string): TimeFinding => {
  const match = laterForm.exec(text);
  const seconds = match === null ? null : laterSeconds(match[1] ?? "");
  if (match === null || seconds === null || seconds <= 0)
    return refused(
      "Write +15 for 15 minutes or +1h for an hour after the last reading, then the temperature.",
    );
  return found({ kind: "later", seconds: Math.round(seconds) }, text, match[0].length);
};

const secondsOf = (match: RegExpExecArray): number | null => {
  const [hour, minute, second] = [match[1], match[2] ?? "0", match[3] ?? "0"].map(Number);
  if (minute! > 59 || second! > 59) return null;
  const half = match[4]?.toLowerCase();
  if (half === undefined) return hour! > 23 ? null : hour! * 3600 + minute! * 60 + second!;
  if (hour! < 1 || hour! > 12) return null;
  return ((hour! % 12) + (half === "p" ? 12 : 0)) * 3600 + minute! * 60 + second!;
};

/** What is wrong with a line that begins with no time. */
const noTime = (text: string): TimeFinding => {
  const dotted = dottedForm.exec(text);
  if (dotted !== null) {
    const said = `${dotted[1]}:${dotted[2]}${dotted[3] ?? ""}`;
    return refused(`${dotted[1]}.${dotted[2]} may be a time or a number. Write ${said}.`);
  }
  const solid = solidForm.exec(text);
  if (solid !== null)
    return refused(`If ${solid[1]}${solid[2]} is a time, write ${solid[1]}:${solid[2]}.`);
  if (otherDateForm.test(text)) return refused("Write a date as 2026-10-03, with the year first.");
  if (/^[-\d.,]+\s*(?:°?\s*[CF])?$/iu.test(text))
    return refused(`Write the time before it: 22:30 ${text}, or now ${text}.`);
  return refused("Write it like 22:30 41.2, now 41.2, or +15 41.2 (15 minutes after the last).");
};

const clock = (text: string, day: number | null): TimeFinding => {
  const match = halfForm.exec(text) ?? clockForm.exec(text);
  if (match === null) return noTime(text);
  const seconds = secondsOf(match);
  if (seconds === null)
    return refused(
      match[1] === "24" ? "Write 0:00 for midnight." : "Write it like 22:30 or 10:30 pm.",
      "a time from 0:00 to 23:59",
    );
  return found({ kind: "clock", day, seconds }, text, match[0].length);
};

/**
 * Reads the time: a clock's with or without a date before it (`22:30`,
 * `22h30`, `10:30 pm`, `2026-10-03 22:30`), `now`, or a time after the last
 * reading (`+15`, `+1h`, `+1:30`). `22.30` is refused: it may be a number.
 */
export const readTypedTime = (typed: string): TimeFinding => {
  const text = typed.trim();
  const now = nowForm.exec(text);
  if (now !== null) return found({ kind: "now" }, text, now[0].length);
  if (text.startsWith("+")) return later(text);
  const date = dateForm.exec(text);
  if (date === null) return clock(text, null);
  const [year, month, day] = [Number(date[1]), Number(date[2]), Number(date[3])];
  if (!isCivil(year, month, day) || year < 1970)
    return refused("Write year, month and day as in 2026-10-03.", "a date that exists");
  return clock(text.slice(date[0].length), daysFromCivil(year, month, day));
};
