/** Typed options of `check` to quantities, with every contradiction named. */
import { failed } from "../problem.ts";
import type { Outcome } from "../problem.ts";
import type { TypedOptions } from "./typed-options.ts";
import { flagName } from "./flag-name.ts";
import { checkShape } from "./option-shapes.ts";
import type { CheckOptions } from "./option-shapes.ts";
import { givenTwice, readOptions } from "./read-options.ts";

const repeatable: ReadonlySet<string> = new Set(["culture", "probe", "column"]);

type Key = keyof CheckOptions;

const catalogueWhy = "a culture from the catalogue brings its own window and hours";
const thermometerWhy = "your own check of the thermometer replaces its maker's accuracy";

const exclusive: readonly (readonly [first: Key, second: Key, why: string])[] = [
  ["culture", "low", catalogueWhy],
  ["culture", "high", catalogueWhy],
  ["culture", "ceiling", catalogueWhy],
  ["culture", "hours", catalogueWhy],
  ["correction", "thermometerAccuracy", thermometerWhy],
  ["correctionUncertainty", "thermometerAccuracy", thermometerWhy],
];

const windowWhy = "a window has two edges and a length of time";
const correctionWhy = "a correction and its standard uncertainty belong together";

const companions: readonly (readonly [given: Key, needed: Key, why: string])[] = [
  ["low", "high", windowWhy],
  ["high", "low", windowWhy],
  ["ceiling", "low", windowWhy],
  ["hours", "low", windowWhy],
  ["low", "hours", windowWhy],
  ["correction", "correctionUncertainty", correctionWhy],
  ["correctionUncertainty", "correction", correctionWhy],
];

const contradiction = (typed: TypedOptions): Outcome<never> | null => {
  for (const [first, second, why] of exclusive) {
    if (typed[first] === undefined || typed[second] === undefined) continue;
    return failed("options-contradict", { first: flagName(first), second: flagName(second), why });
  }
  for (const [given, needed, why] of companions) {
    if (typed[given] === undefined || typed[needed] !== undefined) continue;
    return failed("option-missing", { option: flagName(needed), why });
  }
  if (typed["culture"] === undefined && typed["low"] === undefined) {
    return failed("option-missing", {
      option: "--culture ID, or --low, --high and --hours",
      why: "a verdict is about one culture's window",
    });
  }
  return null;
};

/** Fails where one probe was said to sit in two places. */
export const twoRoles = ({ probe }: Pick<CheckOptions, "probe">): Outcome<never> | null => {
  const roles = new Map<string, string>();
  for (const [name, role] of probe) {
    const before = roles.get(name) ?? role;
    if (before !== role) {
      return failed("options-contradict", {
        first: `--probe ${name}=${before}`,
        second: `--probe ${name}=${role}`,
        why: "a probe sat in one place",
      });
    }
    roles.set(name, role);
  }
  return null;
};

/** Reads the options of `check`; fails at the first that cannot be read or cannot stand beside another. */
export const readCheckOptions = (typed: TypedOptions): Outcome<CheckOptions> => {
  const clash = givenTwice(typed, repeatable) ?? contradiction(typed);
  if (clash !== null) return clash;
  const read = readOptions(checkShape, typed);
  return read.ok ? (twoRoles(read.value) ?? read) : read;
};
