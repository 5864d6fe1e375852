import { celsiusDifference, type CelsiusDifference } from "../quantity.ts";
import { mean } from "../stats/summary.ts";

/**
 * Standard deviation of a future run's mean about the one measured, degC, when
 * only one test of a set-up is known: jar filled, lid seated and room met
 * differently next time (an assumption of this project).
 */
export const assumedRunToRun = celsiusDifference(0.3);

/** The same as standard deviation of single runs: two runs differ by sqrt(2) of it. */
export const assumedDeviation = assumedRunToRun / Math.SQRT2;
/** The assumption counts as much as this many repeats (an assumption itself). */
const assumedRepeats = 2;

/** How much runs of one set-up scatter. */
export interface RunScatter {
  /** Standard deviation of a run's hold mean about its set-up's long-run level, degC. */
  readonly deviation: number;
  /** Tests beyond the first of each set-up; 0 where the figure is assumed. */
  readonly repeats: number;
}

/**
 * Scatter between runs, from set-ups that were tested more than once.
 *
 * The variances of the hold means within the set-ups are pooled and shrunk
 * towards the assumed one: (nu0 s0^2 + sum (n_j - 1) s_j^2) / (nu0 + sum (n_j - 1)),
 * nu0 = 2, s0 = 0.3 / sqrt(2). That is the scaled inverse chi-square prior of
 * Gelman et al., Bayesian Data Analysis (3rd ed. 2013), 2.6, with nu0 degrees of
 * freedom. What the tests' own mean uncertainties explain of the scatter is not
 * taken out, so it stands in the budget twice: a little too careful.
 *
 * @param setUps hold means of each set-up's tests, degC; single tests say nothing
 */
export const runScatter = (setUps: readonly (readonly number[])[]): RunScatter => {
  let squares = 0;
  let repeats = 0;
  for (const means of setUps) {
    if (means.length < 2) continue;
    const centre = mean(means);
    for (const value of means) squares += (value - centre) ** 2;
    repeats += means.length - 1;
  }
  if (repeats === 0) return { deviation: assumedDeviation, repeats };
  const assumed = assumedRepeats * assumedDeviation ** 2;
  return { deviation: Math.sqrt((assumed + squares) / (assumedRepeats + repeats)), repeats };
};

/** A future run about the mean of the tests of its set-up, degC. */
export interface FutureRun {
  readonly value: CelsiusDifference;
  readonly from: "measured" | "assumed";
  readonly repeats?: number;
}

/**
 * How far a future run may lie from the mean of `tests` runs: standard deviation
 * s sqrt(1 + 1/n), the prediction of one more value of a normal distribution.
 *
 * Taken as normal about the shrunk s, so where runs really scatter by 0.4 degC
 * its 95 % holds 77 to 86 % of future runs with two to five tests, and 94 to 93 %
 * at 0.2. Student's t with nu0 + nu degrees of freedom would ask more of two
 * tests that agree than of one alone; scaled so that it does not, it gains
 * 2 to 4 points at 0.4 and loses 2 to 4 at 0.2.
 *
 * @param tests at least 1
 */
export const futureRun = ({ deviation, repeats }: RunScatter, tests: number): FutureRun => {
  // One test and nothing measured is the assumption itself, without a rounding on the way.
  if (repeats === 0 && tests <= 1) return { value: assumedRunToRun, from: "assumed" };
  const value = celsiusDifference(deviation * Math.sqrt(1 + 1 / Math.max(1, tests)));
  return repeats === 0 ? { value, from: "assumed" } : { value, from: "measured", repeats };
};
