/** An appliance as written, read into data. */
import type * as z from "zod";
import { applianceKinds } from "../kitchen.ts";
import type { Appliance, Control } from "../kitchen.ts";
import { readSteps } from "./control-text.ts";
import { complain, group, listOf, optional, required } from "./leaf.ts";
import { nameWanted, oneOf } from "./wanted.ts";
import { readName, readWord } from "./written-names.ts";
import { readDate, readYesNo } from "./written-values.ts";

export const controlKeys = ["control", "programs", "steps", "marks"] as const;

const stepsWanted = {
  expected:
    "the lowest (at most 65 degC) and highest setting, a whole number of steps apart, and the step",
  example: "steps: 30..45 by 0.5 or 86F..113F by 1F",
};
const thermostatWanted = oneOf(["yes", "no", "unknown"], "thermostat");
const movedWanted = {
  expected: "the day it was last moved or repaired, as year-month-day",
  example: "moved: 2026-05-01",
};
const names = listOf(required(nameWanted, readName));

/** undefined for "unknown", which is an answer, unlike a text that cannot be read. */
const readThermostat = (text: string): { known: boolean | null } | null => {
  const known = readYesNo(text);
  return known !== null || /^unknown$/i.test(text.trim()) ? { known } : null;
};

const applianceGroup = group({
  name: optional(nameWanted, readName),
  kind: optional(oneOf(applianceKinds, "kind"), readWord(applianceKinds)),
  control: optional(
    { expected: '"fixed", or programs, steps or marks instead of it', example: "control: fixed" },
    readWord(["fixed"]),
  ),
  programs: names,
  steps: optional(stepsWanted, readSteps),
  marks: names,
  thermostat: optional(thermostatWanted, readThermostat),
  moved: optional(movedWanted, readDate),
});
type ApplianceGroup = z.output<typeof applianceGroup>;

const twice = (list: readonly string[]): string | null =>
  list.find((name, index) => list.indexOf(name) !== index) ?? null;

const question = (entry: ApplianceGroup, context: z.RefinementCtx): void => {
  const said = controlKeys.filter((key) =>
    Array.isArray(entry[key]) ? entry[key].length > 0 : entry[key] !== null,
  );
  if (said.length > 1) {
    complain(context, [said[1]!], {
      expected: "only one of control, programs, steps and marks",
      found: said.join(" and "),
      example: "",
    });
  }
  for (const key of ["programs", "marks"] as const) {
    const name = twice(entry[key]);
    if (name === null) continue;
    complain(context, [key], {
      expected: `each of the ${key} once`,
      found: `"${name}" twice`,
      example: "",
    });
  }
};

export const applianceSchema = applianceGroup.superRefine(question);

const controlOf = ({ programs, steps, marks }: ApplianceGroup): Control => {
  if (programs.length > 0) return { kind: "programs", programs };
  if (marks.length > 0) return { kind: "marks", marks };
  return steps ?? { kind: "fixed" };
};

export const asAppliance = (id: string, entry: ApplianceGroup): Appliance => ({
  id,
  name: entry.name ?? id,
  kind: entry.kind ?? "other",
  control: controlOf(entry),
  thermostat: entry.thermostat?.known ?? null,
  movedOn: entry.moved,
});
