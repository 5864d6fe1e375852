import { done, failed, type Outcome } from "../problem.ts";
import type { HeatingTarget } from "./heating-types.ts";

/**
 * z implied by two pairs of temperature and time that are used for one
 * another: the difference over the tenfolds of time, degC.
 */
export const impliedZ = (
  cooler: { readonly celsius: number; readonly minutes: number },
  hotter: { readonly celsius: number; readonly minutes: number },
): number => (hotter.celsius - cooler.celsius) / Math.log10(cooler.minutes / hotter.minutes);

/**
 * z of what milk for curd is heated for. The home practices 85 degC 30 min and
 * 90 degC 10 min, printed side by side, imply 5 / log10(3) = 10.5 degC; the
 * round 10 degC is common practice for such reckonings, no source.
 */
export const milkZ = 10;

/** z of the two comparison steps: 63 degC 30 min and 72 degC 15 s imply 9 / log10(120) = 4.33 degC. */
const comparisonZ = impliedZ({ celsius: 63, minutes: 30 }, { celsius: 72, minutes: 0.25 });

const step = (
  name: string,
  celsius: number,
  minutes: number,
  z: number,
  source: string,
): HeatingTarget => ({ celsius, minutes, z, from: { name, source } });

const homePractice = (printed: string): string =>
  `McGee, On Food and Cooking (2004), prints ${printed} as home practice`;
const yoghurtReview = (printed: string): string =>
  `Sfakianakis & Tzia, Foods 3(1), 176 (2014), table 1, prints ${printed} for yoghurt milk`;
const definition = (printed: string): string =>
  `${printed}, as 25 Texas Administrative Code 217.1 and Michigan Compiled Laws 288.697 print it; for comparison only`;

/** Heating steps known by name; the first is what is asked where nothing is said. */
export const heatingTargets: readonly HeatingTarget[] = [
  step(
    "milk-90",
    90,
    10,
    milkZ,
    `common practice for milk meant for long culturing; ${homePractice("90 degC (195 degF) for 10 min")}`,
  ),
  step("milk-85", 85, 30, milkZ, homePractice("85 degC (185 degF) for 30 min")),
  step("yoghurt-85", 85, 20, milkZ, yoghurtReview("85 degC for 20 to 30 min")),
  step("yoghurt-90", 90, 5, milkZ, yoghurtReview("90 to 95 degC for 5 min")),
  step("compare-63", 63, 30, comparisonZ, definition("63 degC (145 degF) for 30 min")),
  step("compare-72", 72, 0.25, comparisonZ, definition("72 degC (161 degF) for 15 s")),
];

/** Fails with all known names. */
export const findHeatingTarget = (name: string): Outcome<HeatingTarget> => {
  const wanted = name.trim().toLowerCase();
  const found = heatingTargets.find(({ from }) => from.name === wanted);
  if (found !== undefined) return done(found);
  const names = heatingTargets.map(({ from }) => from.name);
  return failed("option-invalid", {
    option: "--step",
    expected: `one of ${names.join(", ")}`,
    found: name,
  });
};
