/** Options of `container` as the container they describe. */
import * as z from "zod";
import type { ContainerEntry } from "../../kitchen/edits/entries.ts";
import { containerStands } from "../../kitchen/kitchen.ts";
import { readWord } from "../../kitchen/schema/written-names.ts";
import { readCount, readDate, readVolume } from "../../kitchen/schema/written-values.ts";
import { done } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import { kitchenShapes } from "../kitchen-shapes.ts";
import { notToCome } from "../local-day.ts";
import { once, read, words } from "../option-readers.ts";

export const containerShape = z.object({
  ...kitchenShapes,
  stands: once(read(`one of ${containerStands.join(", ")}`, readWord(containerStands))),
  name: words("a name, such as Jars in water"),
  volume: once(read("the volume of one vessel, such as 0.5L or 250 mL", readVolume)),
  count: once(read("a whole number, such as 6", readCount)),
  changed: once(read("a day as year-month-day, such as 2026-05-01", readDate)),
});

export type ContainerOptions = z.infer<typeof containerShape>;

/** Only what was said; an empty entry where nothing was. `today`: ISO day. */
export const saidContainer = (
  options: ContainerOptions,
  today: string,
): Outcome<ContainerEntry> => {
  const { stands, name, volume, count, changed } = options;
  const toCome = changed === undefined ? null : notToCome("--changed", changed, today);
  if (toCome !== null) return toCome;
  return done({
    ...(stands === undefined ? {} : { stands }),
    ...(name === undefined ? {} : { name }),
    ...(volume === undefined ? {} : { volume: `${Math.round(volume * 1e6) / 1e6} L` }),
    ...(count === undefined ? {} : { count }),
    ...(changed === undefined ? {} : { changed }),
  });
};
