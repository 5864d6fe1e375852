/** Options of `enter`, and what cannot stand together. */
import * as z from "zod";
import { readDate } from "../../kitchen/schema/written-values.ts";
import { done, failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import { fileShapes } from "../file-option-shapes.ts";
import { flagName } from "../flag-name.ts";
import { once, read, words } from "../option-readers.ts";
import { kitchenShapes } from "../kitchen/kitchen-folder.ts";
import { testShapes } from "../kitchen/test-options.ts";

const { appliance, setting, container, fill, room, notes, name, thermometer } = testShapes;

export const enterShape = z.object({
  ...kitchenShapes,
  appliance,
  setting,
  container,
  fill,
  room,
  notes,
  name,
  thermometer,
  probe: fileShapes.probe,
  unit: fileShapes.unit,
  date: once(read("a day as year-month-day, such as 2026-10-03", readDate)),
  out: words("a file's name, such as night.csv"),
});

export type EnterOptions = z.infer<typeof enterShape>;

/** Options that may be given again. */
export const repeatedOptions = ["probe", "thermometer"] as const;

const onlyStored = [
  "kitchen",
  "appliance",
  "setting",
  "container",
  "fill",
  "room",
  "notes",
  "name",
  "thermometer",
] as const;

/** --out writes readings alone; what else was said would be lost. */
export const outAlone = (options: EnterOptions): Outcome<void> => {
  if (options.out === undefined) return done(undefined);
  const lost = onlyStored.find((key) => {
    const said = options[key];
    return Array.isArray(said) ? said.length > 0 : said !== undefined;
  });
  if (lost === undefined) return done(undefined);
  return failed("options-contradict", {
    first: "--out",
    second: flagName(lost),
    why: "a CSV file holds times and temperatures only",
  });
};
