/** Options of `appliance` as the appliance they describe. */
import * as z from "zod";
import { applianceKinds } from "../../kitchen/kitchen.ts";
import type { ApplianceEntry } from "../../kitchen/edits/entries.ts";
import { controlKeys } from "../../kitchen/schema/appliance-schema.ts";
import { readSteps } from "../../kitchen/schema/control-text.ts";
import { readWord } from "../../kitchen/schema/written-names.ts";
import { readDate } from "../../kitchen/schema/written-values.ts";
import { done, failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import { notToCome } from "../local-day.ts";
import { once, oneOf, read, words } from "../option-readers.ts";
import { plainNumber } from "../plain-number.ts";
import { kitchenShapes } from "../kitchen-shapes.ts";

const names = (example: string) =>
  once(
    read(`names with commas between them, such as ${example}`, (text) => {
      const list = text.split(",").map((name) => name.trim());
      return list.includes("") ? null : list;
    }),
  );

export const applianceShape = z.object({
  ...kitchenShapes,
  kind: once(read(`one of ${applianceKinds.join(", ")}`, readWord(applianceKinds))),
  name: words("a name, such as Warming box"),
  thermostat: oneOf("yes, no or unknown", { yes: "yes", no: "no", unknown: "unknown" }),
  control: oneOf("fixed; or --programs, --steps or --marks in its place", { fixed: "fixed" }),
  programs: names("warm,yoghurt"),
  marks: names("low,1,2,high"),
  steps: words("two temperatures, the lower first, such as 30..45"),
  step: words("a size, such as 0.5"),
  moved: once(read("a day as year-month-day, such as 2026-05-01", readDate)),
});

export type ApplianceOptions = z.infer<typeof applianceShape>;

const stepsEntry = (steps: string, step: string | undefined): Outcome<ApplianceEntry> => {
  const written = step === undefined ? steps : `${steps} by ${step}`;
  if (readSteps(written) !== null) return done({ steps: written });
  return failed("option-invalid", {
    option: "--steps",
    expected:
      "a lowest (at most 65 degC) and a highest setting, a whole number of steps apart, such as 30..45 or 86F..113F",
    found: step === undefined ? steps : `${steps} in steps of ${step}`,
  });
};

/** The control that was said; nothing where none was. */
const controlEntry = (options: ApplianceOptions): Outcome<ApplianceEntry> => {
  const [first, second] = controlKeys.filter((key) => options[key] !== undefined);
  if (first !== undefined && second !== undefined) {
    const why = "an appliance has one kind of control";
    return failed("options-contradict", { first: `--${first}`, second: `--${second}`, why });
  }
  const { control, programs, marks, steps, step } = options;
  if (step !== undefined && steps === undefined) {
    return failed("option-missing", {
      option: "--steps",
      why: "--step is the size of one of them",
    });
  }
  if (programs !== undefined) return done({ programs });
  if (marks !== undefined) return done({ marks: marks.map(plainNumber) });
  if (steps !== undefined) return stepsEntry(steps, step);
  return done(control === undefined ? {} : { control });
};

/** Only what was said; an empty entry where nothing was. `today`: ISO day. */
export const saidAppliance = (
  options: ApplianceOptions,
  today: string,
): Outcome<ApplianceEntry> => {
  const { kind, name, thermostat, moved } = options;
  const toCome = moved === undefined ? null : notToCome("--moved", moved, today);
  if (toCome !== null) return toCome;
  const control = controlEntry(options);
  if (!control.ok) return control;
  return done({
    ...(name === undefined ? {} : { name }),
    ...(kind === undefined ? {} : { kind }),
    ...control.value,
    ...(thermostat === undefined ? {} : { thermostat }),
    ...(moved === undefined ? {} : { moved }),
  });
};
