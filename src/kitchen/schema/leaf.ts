/**
 * Building blocks of the schema. Every value of a kitchen file is a text (or a
 * list, a map, or nothing); a leaf reads one text and knows what to say when
 * it cannot. What a failed leaf says travels in the issue's `params`.
 */
import * as z from "zod";

/** What a leaf asks for, in words, and how one might write it. */
export interface Wanted {
  readonly expected: string;
  readonly example: string;
  /** The words there are, where it is one of a few; the nearest is offered. */
  readonly words?: readonly string[];
}

/** A value that must be there and be readable. */
export const required = <Value>(wanted: Wanted, read: (text: string) => Value | null) =>
  z.unknown().transform((value, context): Value => {
    const got = typeof value === "string" ? read(value) : null;
    if (got !== null) return got;
    context.addIssue({ code: "custom", params: { ...wanted } });
    return z.NEVER;
  });

/** A value that may be left out or left empty: then null. */
export const optional = <Value>(wanted: Wanted, read: (text: string) => Value | null) =>
  required(wanted, read)
    .nullish()
    .transform((value) => value ?? null);

/** A list that may be left out, left empty, or be a single value standing alone. */
export const listOf = <Item extends z.ZodType>(item: Item) =>
  z.preprocess(
    (value) =>
      value === null || value === undefined ? [] : Array.isArray(value) ? value : [value],
    z.array(item),
  );

/** A group of keys. Its message lists the keys there are, for the nearest to a mistyped one. */
export const group = <Shape extends z.core.$ZodLooseShape>(shape: Shape) =>
  z.strictObject(shape, {
    error: ({ code }) =>
      code === "unrecognized_keys" ? Object.keys(shape).join(" ") : "a group of keys",
  });

/** Adds what is wrong between several values of one group. */
export const complain = (
  context: z.RefinementCtx,
  path: readonly (string | number)[],
  wanted: Wanted & { readonly found?: string; readonly suggestion?: string },
): void => {
  context.addIssue({ code: "custom", path: [...path], params: { ...wanted } });
};
