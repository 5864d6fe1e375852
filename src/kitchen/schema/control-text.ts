/** The steps of a control as written: "30..45 by 0.5". */
import { parseRange, parseTemperature, parseTemperatureDifference } from "../../quantity-text.ts";
import type { Control } from "../kitchen.ts";

type Steps = Extract<Control, { kind: "steps" }>;

/** Where the lowest setting is above this, degC, its letter F was left out: nothing is cultured there. */
const highestLow = 65;

/** An accumulated grid point may miss its decimal value by rounding only. */
const rounded = (value: number): number => Math.round(value * 1e9) / 1e9;

/**
 * "30..45 by 0.5", "86F..113F by 1F"; without "by" in steps of 1, in the unit
 * of the ends. A step without a letter has the unit of the ends too. null
 * where the ends are not a whole number of steps apart, or all lie above 65 degC.
 */
export const readSteps = (text: string): Steps | null => {
  const [ends = "", by = "1", ...more] = text.trim().split(/\s+by\s+/i);
  const range = parseRange(ends);
  if (range === null || more.length > 0) return null;
  const inFahrenheit = range.high.writtenUnit === "degF";
  const bare = parseTemperature(by)?.writtenUnit === null;
  const step = parseTemperatureDifference(bare && inFahrenheit ? `${by}F` : by);
  const { low, high } = { low: rounded(range.low.celsius), high: rounded(range.high.celsius) };
  if (step === null || step < 0.001 || low >= high || low < -40 || high > 250) return null;
  if (low > highestLow) return null;
  const count = (high - low) / step;
  if (Math.abs(count - Math.round(count)) > 1e-4) return null;
  return { kind: "steps", low, high, step: rounded(step) };
};
