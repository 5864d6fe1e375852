/** The probes that are read by hand: as said, else one in the food's place. */
import type { Kitchen } from "../../kitchen/kitchen.ts";
import { done, failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import { probeHeadings } from "../../readings/typed/probe-heading.ts";
import { twoRoles } from "../check-options.ts";
import { thermometerOf } from "../known-ids.ts";
import type { NewProbe } from "./new-test.ts";
import type { EnteredOptions } from "./entered-options.ts";

const usualProbe = ["Jar", "food"] as const;

const same = (one: string, other: string): boolean => one.toLowerCase() === other.toLowerCase();

const strangeThermometer = (
  { thermometer }: EnteredOptions,
  names: readonly string[],
  kitchen: Kitchen | null,
): Outcome<never> | null => {
  for (const { probe, id } of thermometer) {
    if (probe !== null && !names.some((name) => same(name, probe))) {
      const probes = names.map((name) => `"${name}"`).join(", ");
      return failed("probe-unknown", { option: "--thermometer", probe, probes });
    }
    const known = kitchen === null ? null : thermometerOf(kitchen, id);
    if (known !== null && !known.ok) return known;
  }
  return null;
};

/** In the order of the numbers on a line; fails where a name or a thermometer cannot be. */
export const enteredProbes = (
  options: EnteredOptions,
  kitchen: Kitchen | null,
): Outcome<readonly NewProbe[]> => {
  const clash = twoRoles(options);
  if (clash !== null) return clash;
  const said = options.probe.length === 0 ? [usualProbe] : options.probe;
  const names = probeHeadings(said.map(([name]) => name));
  if (!names.ok) return names;
  const stranger = strangeThermometer(options, names.value, kitchen);
  if (stranger !== null) return stranger;
  const general = options.thermometer.find(({ probe }) => probe === null)?.id ?? null;
  return done(
    said.map(([name, place]) => {
      const own = options.thermometer.find(({ probe }) => probe !== null && same(probe, name));
      return { name, place, thermometer: own?.id ?? general };
    }),
  );
};
