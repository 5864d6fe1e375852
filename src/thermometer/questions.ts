import { celsiusToFahrenheit } from "../quantity.ts";
import { mean } from "../stats/summary.ts";
import type { CheckQuestion } from "./check-question.ts";
import { checkPoints, displayStep } from "./check-points.ts";
import { checkTruth } from "./check-truth.ts";
import { saturationPressure } from "./saturation.ts";
import { scaleConflicts } from "./scale-conflicts.ts";
import { altitudeOfPressure } from "./standard-atmosphere.ts";
import type { Thermometer, ThermometerCheck } from "./thermometer.ts";

/*
 * How far a check may lie from what it should show, degC. All are common
 * practice, no source: beyond them a slip (bath not stirred, probe on the pot,
 * wrong scale, wrong place) is likelier than such a thermometer.
 */
const iceLimit = 2;
const boilingBelow = 3;
const boilingAbove = 1;
const referenceLimit = 5;
/** A settled thermometer's readings agree within this, or within some display steps. */
const settledSpread = 0.5;
const settledSteps = 5;

/** degF for boiling water from sea level up to 5,000 m, where the place is not known. */
const boilingFahrenheit = { low: 181, high: 215 };

/** A question but for the check's index and whether it is left out, which are the same for all. */
type Finding = CheckQuestion extends infer One
  ? One extends CheckQuestion
    ? Omit<One, "check" | "leftOut">
    : never
  : never;

const looksLikeFahrenheit = (reading: number, truth: number, within: number): boolean =>
  Math.abs(reading - celsiusToFahrenheit(truth)) <= within * 1.8;

const iceFinding = (reading: number): Finding | null => {
  if (Math.abs(reading) <= iceLimit) return null;
  if (looksLikeFahrenheit(reading, 0, iceLimit)) return { code: "looks-like-fahrenheit", reading };
  return { code: reading > 0 ? "ice-too-warm" : "ice-too-cold", reading };
};

const altitudeBoilingAt = (celsius: number): number | null => {
  const pressure = saturationPressure(celsius);
  return pressure === null ? null : altitudeOfPressure(pressure);
};

const boilingFinding = (reading: number, expected: number | null): Finding | null => {
  if (expected === null) {
    const { low, high } = boilingFahrenheit;
    return reading >= low && reading <= high
      ? { code: "looks-like-fahrenheit", reading }
      : { code: "boiling-place-unknown" };
  }
  if (reading < expected - boilingBelow)
    return { code: "boiling-too-cold", reading, expected, altitude: altitudeBoilingAt(reading) };
  if (reading <= expected + boilingAbove) return null;
  const fahrenheit = [100, expected].some((truth) =>
    looksLikeFahrenheit(reading, truth, boilingBelow),
  );
  return fahrenheit
    ? { code: "looks-like-fahrenheit", reading }
    : { code: "boiling-too-hot", reading, expected };
};

const referenceFinding = (reading: number, truth: number): Finding | null => {
  if (Math.abs(reading - truth) <= referenceLimit) return null;
  return looksLikeFahrenheit(reading, truth, iceLimit)
    ? { code: "looks-like-fahrenheit", reading }
    : { code: "reference-far-off", reading, truth };
};

const levelFinding = (check: ThermometerCheck): Finding | null => {
  const reading = mean(check.readings);
  if (check.kind === "ice") return iceFinding(reading);
  if (check.kind === "reference") return referenceFinding(reading, check.truth);
  return boilingFinding(reading, checkTruth(check)?.celsius ?? null);
};

const spreadFinding = ({ readings }: ThermometerCheck, step: number): Finding | null => {
  const spread = Math.max(...readings) - Math.min(...readings);
  // A hair for the decimals' rounding: 38.6 - 38.1 is a little more than 0.5.
  const limit = Math.max(settledSpread, settledSteps * step) + 1e-9;
  return spread > limit ? { code: "not-settled", spread } : null;
};

const questionsOfOne = (
  check: ThermometerCheck,
  index: number,
  step: number,
): readonly CheckQuestion[] => {
  if (check.readings.length === 0) return [];
  // Confirming readings does not tell what they should have been.
  const leftOut = !check.confirmed || checkTruth(check) === null;
  return [levelFinding(check), spreadFinding(check, step)]
    .filter((finding) => finding !== null)
    .map((finding) => Object.assign({ check: index, leftOut }, finding));
};

/**
 * What looks wrong in a thermometer's checks: each by itself, then those that
 * remain against one another. A questioned check is left out of the correction
 * until the person confirms it; the question stays.
 */
export const checkQuestions = (thermometer: Thermometer): readonly CheckQuestion[] => {
  const { checks } = thermometer;
  const step = displayStep(thermometer);
  const each = checks.flatMap((check, index) => questionsOfOne(check, index, step));
  const leftOut = new Set(each.filter((one) => one.leftOut).map((one) => one.check));
  const kept = checks.map((_, index) => index).filter((index) => !leftOut.has(index));
  const conflicts = scaleConflicts(checkPoints(thermometer, kept));
  return [
    ...each,
    ...conflicts.map(({ check, perHundred }) => ({
      check,
      leftOut: !checks[check]!.confirmed,
      code: "scale-off" as const,
      perHundred,
    })),
  ];
};
