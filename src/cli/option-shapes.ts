/**
 * The shape of every option of `check`: text in, quantity out. A failure's
 * message is what was expected, with an example; the caller adds which option
 * it was and what was found.
 */
import * as z from "zod";
import {
  parseDuration,
  parseFraction,
  parseRange,
  parseTemperature,
  parseTemperatureDifference,
} from "../quantity-text.ts";
import type { TypedRange, TypedTemperature } from "../quantity-text.ts";
import { probeRoles } from "../readings/series.ts";
import type { ProbeRole } from "../readings/series.ts";

/** Text read by one of our parsers; null from it means `expected` was not met. */
const read = <Value>(expected: string, parse: (text: string) => Value | null) =>
  z.string().transform((text, context): Value => {
    const value = parse(text);
    if (value !== null) return value;
    context.addIssue({ code: "custom", message: expected });
    return z.NEVER;
  });

/** The one value of an option; giving it twice with different values is refused elsewhere. */
const once = <Value>(shape: z.ZodType<Value, string>) =>
  z
    .array(z.string())
    .transform((values) => values[0] ?? "")
    .pipe(shape)
    .optional();

const within =
  (low: number, high: number) =>
  <Value extends number>(value: Value | null): Value | null =>
    value !== null && value >= low && value <= high ? value : null;

const plausible = (found: TypedTemperature | null): TypedTemperature | null =>
  found !== null && within(-40, 200)(found.celsius) !== null ? found : null;

const temperature = once(
  read("a temperature between -40 and 200 degC, such as 38, 38C or 100.4F", (text) =>
    plausible(parseTemperature(text)),
  ),
);

const spread = (what: string) =>
  once(
    read(`${what} of 0 to 20 degC, such as 0.5 or 0.9F`, (text) =>
      within(0, 20)(parseTemperatureDifference(text)),
    ),
  );

const rising = (range: TypedRange | null): TypedRange | null =>
  range !== null && range.low.celsius <= range.high.celsius ? range : null;

const oneOf = <Value extends string>(expected: string, words: Readonly<Record<string, Value>>) =>
  once(read(expected, (text) => new Map(Object.entries(words)).get(text.toLowerCase()) ?? null));

const probeRole = (text: string): readonly [string, ProbeRole] | null => {
  const at = text.lastIndexOf("=");
  const role = probeRoles.find((word) => word === text.slice(at + 1).toLowerCase());
  return at < 1 || role === undefined ? null : [text.slice(0, at), role];
};

export const checkShape = z.object({
  culture: z.array(z.string()).default([]),
  low: temperature,
  high: temperature,
  ceiling: temperature,
  hours: once(
    read("a time of up to 240 hours, such as 36 or 36h", (text) => {
      const seconds = within(60, 240 * 3600)(parseDuration(text, "h"));
      return seconds === null ? null : seconds / 3600;
    }),
  ),
  share: once(
    read("a part of the time from 0.5 to 1, such as 0.95 or 95%", (text) =>
      within(0.5, 1)(parseFraction(text)),
    ),
  ),
  confidence: once(
    read("a probability from 0.5 to 0.999, such as 0.95 or 95%", (text) =>
      within(0.5, 0.999)(parseFraction(text)),
    ),
  ),
  thermometerAccuracy: spread("a half-width"),
  correction: once(
    read("a difference between -20 and 20 degC, such as -0.4 or 0.7F", (text) =>
      within(-20, 20)(parseTemperatureDifference(text)),
    ),
  ),
  correctionUncertainty: spread("a standard uncertainty"),
  room: once(
    read("two temperatures, the lower first, such as 17..25 or 63F..77F", (text) => {
      const range = rising(parseRange(text));
      return range && plausible(range.low) && plausible(range.high) ? range : null;
    }),
  ),
  runToRun: spread("a standard deviation"),
  probe: z
    .array(
      read(
        "a column's name and where it sat, such as Jar=food, Basin=bath or Kitchen=room",
        probeRole,
      ),
    )
    .default([]),
  column: z.array(z.string()).default([]),
  unit: oneOf("C or F", {
    c: "degC",
    degc: "degC",
    "°c": "degC",
    f: "degF",
    degf: "degF",
    "°f": "degF",
  }),
  dateOrder: oneOf("day-first or month-first", {
    "day-first": "day-first",
    dmy: "day-first",
    "month-first": "month-first",
    mdy: "month-first",
  }),
  decimal: oneOf("comma or point", { comma: ",", ",": ",", point: ".", ".": "." }),
  interval: once(
    read("a time between two readings with its unit, such as 5s, 1min or 0:10:00", (text) => {
      const seconds = within(0.001, 86_400)(parseDuration(text));
      return seconds;
    }),
  ),
  report: once(read("a file's name, such as night.html", (text) => (text === "" ? null : text))),
  json: z.boolean().default(false),
  strict: z.boolean().default(false),
});

export type CheckOptions = z.infer<typeof checkShape>;
