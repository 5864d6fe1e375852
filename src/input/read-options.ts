/** Typed options of any command to quantities, by the command's shape. */
import type * as z from "zod";
import { done, failed } from "../problem.ts";
import type { Outcome } from "../problem.ts";
import type { TypedOptions } from "./typed-options.ts";
import { flagName } from "./flag-name.ts";

/** Fails where an option of one value was given two. */
export const givenTwice = (
  typed: TypedOptions,
  repeatable: ReadonlySet<string>,
): Outcome<never> | null => {
  for (const [key, values] of Object.entries(typed)) {
    if (typeof values === "boolean" || repeatable.has(key)) continue;
    const other = values.find((value) => value !== values[0]);
    if (other === undefined) continue;
    return failed("options-contradict", {
      first: `${flagName(key)} ${values[0]}`,
      second: `${flagName(key)} ${other}`,
      why: "it can have one value only",
    });
  }
  return null;
};

const foundAt = (typed: TypedOptions, path: readonly PropertyKey[]): string => {
  const values = typed[String(path[0])];
  const at = typeof path[1] === "number" ? path[1] : 0;
  return Array.isArray(values) ? String(values[at]) : String(values);
};

/** Fails at the first option that cannot be read, with what was expected and found. */
export const readOptions = <Options>(
  shape: z.ZodType<Options>,
  typed: TypedOptions,
): Outcome<Options> => {
  const parsed = shape.safeParse(typed);
  if (parsed.success) return done(parsed.data);
  const issue = parsed.error.issues[0];
  const path = issue?.path ?? [];
  return failed("option-invalid", {
    option: flagName(String(path[0] ?? "")),
    expected: issue?.message ?? "",
    found: foundAt(typed, path),
  });
};

/** Both together: an option given two values, then one that cannot be read. `repeatable`: keys that may be given again. */
export const readTyped = <Options>(
  shape: z.ZodType<Options>,
  repeatable: readonly string[],
  typed: TypedOptions,
): Outcome<Options> => givenTwice(typed, new Set(repeatable)) ?? readOptions(shape, typed);
