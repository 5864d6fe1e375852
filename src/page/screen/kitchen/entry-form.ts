/** An entry of kitchen.yaml as what stands in its form, and back as the options of its command. */
import type { FormValues, WrittenEntry } from "../../protocol.ts";
import type { Entered } from "../form/field-types.ts";

const textOf = (value: unknown): string => {
  if (value === true) return "yes";
  if (value === false) return "no";
  if (Array.isArray(value)) return value.map(textOf).join(", ");
  return value === null || value === undefined ? "" : String(value);
};

const plain = (entry: WrittenEntry): Entered =>
  Object.fromEntries(Object.entries(entry).map(([key, value]) => [key, textOf(value)]));

const controls = ["steps", "programs", "marks"] as const;

/** "30..45 by 0.5" is two fields. */
const stepFields = (steps: unknown): Entered => {
  const [range = "", size = ""] = textOf(steps).split(/\s+by\s+/u);
  return { steps: range, step: size };
};

export const enteredAppliance = (entry: WrittenEntry): Entered => {
  const control = controls.find((key) => entry[key] !== undefined) ?? "fixed";
  const steps = control === "steps" ? stepFields(entry["steps"]) : {};
  return { ...plain(entry), control, ...steps };
};

/** The kind of control is said by its own field; only "fixed" is an option as well. */
export const applianceOptions = ({ control, ...rest }: FormValues): FormValues => {
  const fixed = Array.isArray(control) && control[0] === "fixed";
  return fixed ? { ...rest, control } : rest;
};

/** Checks are added, never changed: their fields stand empty. */
export const enteredThermometer = (entry: WrittenEntry): Entered => {
  const { checks: _, ...rest } = entry;
  return plain(rest);
};

export const enteredBatch = (entry: WrittenEntry): Entered => {
  const trouble = entry["trouble"];
  return {
    ...plain(entry),
    trouble: Array.isArray(trouble) ? trouble.map(textOf) : [],
  };
};

export { plain as enteredPlain };
