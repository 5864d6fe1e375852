/** Options of `culture` as the culture they describe. */
import * as z from "zod";
import type { CultureEntry } from "../../kitchen/edits/entries.ts";
import { kitchenShapes } from "../kitchen-shapes.ts";
import { temperature, words } from "../option-readers.ts";
import { holdHours } from "../option-shapes.ts";
import { plainNumber } from "../plain-number.ts";

export const cultureShape = z.object({
  ...kitchenShapes,
  name: words("a name, such as My blend"),
  low: temperature,
  high: temperature,
  target: temperature,
  ceiling: temperature,
  hours: holdHours,
});

export type CultureOptions = z.infer<typeof cultureShape>;

/** Figures in the words they were typed in; an empty entry where none were. */
export const saidCulture = (options: CultureOptions): CultureEntry => {
  const { name, low, high, target, ceiling, hours } = options;
  return {
    ...(name === undefined ? {} : { name }),
    ...(low === undefined ? {} : { low: plainNumber(low.written) }),
    ...(high === undefined ? {} : { high: plainNumber(high.written) }),
    ...(target === undefined ? {} : { target: plainNumber(target.written) }),
    ...(ceiling === undefined ? {} : { ceiling: plainNumber(ceiling.written) }),
    ...(hours === undefined ? {} : { hours }),
  };
};
