/** Options of `enter`, and what cannot stand together. */
import * as z from "zod";
import { flagName } from "../../input/flag-name.ts";
import { words } from "../../input/option-readers.ts";
import { enteredShapes } from "../../input/water-test/entered-options.ts";
import { done, failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";

export const enterShape = z.object({
  ...enteredShapes,
  out: words("a file's name, such as night.csv"),
});

export type EnterOptions = z.infer<typeof enterShape>;

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
