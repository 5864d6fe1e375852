/**
 * How options are read: text in, quantity out. A failure's message is what was
 * expected, with an example; `readOptions` adds which option it was and what
 * was found.
 */
import * as z from "zod";
import { parseRange, parseTemperature, parseTemperatureDifference } from "../quantity-text.ts";
import type { TypedRange, TypedTemperature } from "../quantity-text.ts";

/** Text read by one of our parsers; null from it means `expected` was not met. */
export const read = <Value>(expected: string, parse: (text: string) => Value | null) =>
  z.string().transform((text, context): Value => {
    const value = parse(text);
    if (value !== null) return value;
    context.addIssue({ code: "custom", message: expected });
    return z.NEVER;
  });

/** The one value of an option; giving it twice with different values is refused elsewhere. */
export const once = <Value>(shape: z.ZodType<Value, string>) =>
  z
    .array(z.string())
    .transform((values) => values[0] ?? "")
    .pipe(shape)
    .optional();

/** Every value of an option that may be given again; empty where it was not given. */
export const several = <Value>(shape: z.ZodType<Value, string>) => z.array(shape).default([]);

export const flag = z.boolean().default(false);

export const words = (expected: string) =>
  once(read(expected, (text) => (text.trim() === "" ? null : text.trim())));

export const within =
  (low: number, high: number) =>
  <Value extends number>(value: Value | null): Value | null =>
    value !== null && value >= low && value <= high ? value : null;

/** What was read, and the words it was read from. */
export type Written<Value> = Value & { readonly written: string };

export const plausible = (found: TypedTemperature | null): TypedTemperature | null =>
  found !== null && within(-40, 200)(found.celsius) !== null ? found : null;

const oneTemperature = read(
  "a temperature between -40 and 200 degC, such as 38, 38C or 100.4F",
  (text): Written<TypedTemperature> | null => {
    const found = plausible(parseTemperature(text));
    return found === null ? null : { ...found, written: text.trim() };
  },
);

export const temperature = once(oneTemperature);

export const spread = (what: string) =>
  once(
    read(`${what} of 0 to 20 degC, such as 0.5 or 0.9F`, (text) =>
      within(0, 20)(parseTemperatureDifference(text)),
    ),
  );

const ofRoom = (celsius: number): boolean => within(-40, 60)(celsius) !== null;

const rising = (range: TypedRange | null): TypedRange | null =>
  range !== null && range.low.celsius <= range.high.celsius ? range : null;

/** Room temperatures. */
export const room = once(
  read(
    "two temperatures of a room (at most 60 degC), the lower first, such as 17..25 or 63F..77F",
    (text): Written<TypedRange> | null => {
      const found = rising(parseRange(text));
      const isOne = found && ofRoom(found.low.celsius) && ofRoom(found.high.celsius);
      return isOne ? { ...found, written: text.trim() } : null;
    },
  ),
);

export const oneOf = <Value extends string>(
  expected: string,
  meanings: Readonly<Record<string, Value>>,
) =>
  once(read(expected, (text) => new Map(Object.entries(meanings)).get(text.toLowerCase()) ?? null));
