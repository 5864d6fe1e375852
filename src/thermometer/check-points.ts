import { mean } from "../stats/summary.ts";
import { resolutionUncertainty } from "./budget.ts";
import { checkTruth, type TruthDoubt } from "./check-truth.ts";
import { inferredStep } from "./display-step.ts";
import type { Thermometer } from "./thermometer.ts";

/** One check as a point of the calibration; degC. */
export interface CheckPoint {
  /** Index into the thermometer's checks. */
  readonly check: number;
  /** Mean of its readings. */
  readonly reading: number;
  readonly truth: number;
  readonly doubts: readonly PointDoubt[];
}

export interface PointDoubt extends TruthDoubt {
  /** Whether the reading is in doubt or the truth. */
  readonly of: "reading" | "truth";
  /**
   * Whether it is one error for all checks that share the source, so that
   * repeating does not average it away: the same reference, the same ice and
   * water, the same barometer or altitude.
   */
  readonly common: boolean;
  readonly degreesOfFreedom: number;
}

/** Display step of a thermometer, degC: as stated, or as its readings show it. */
export const displayStep = ({ resolution, checks }: Thermometer): number =>
  resolution ?? inferredStep(checks.flatMap((check) => check.readings));

/**
 * Pooled standard deviation of single readings within their checks (JCGM 100,
 * 4.2.4): few readings each, but one thermometer. Zero where none was repeated;
 * then the display step alone speaks for the reading.
 */
const pooledScatter = (
  samples: readonly (readonly number[])[],
): { readonly standardDeviation: number; readonly degreesOfFreedom: number } => {
  let squares = 0;
  let degreesOfFreedom = 0;
  for (const sample of samples) {
    const middle = mean(sample);
    for (const reading of sample) squares += (reading - middle) ** 2;
    degreesOfFreedom += sample.length - 1;
  }
  const variance = degreesOfFreedom > 0 ? squares / degreesOfFreedom : 0;
  return { standardDeviation: Math.sqrt(variance), degreesOfFreedom };
};

/**
 * The calibration points of those checks (`used`: indices) whose truth is known
 * and that have readings, each with every doubt about its reading and its truth.
 */
export const checkPoints = (
  thermometer: Thermometer,
  used: readonly number[],
): readonly CheckPoint[] => {
  const readingsOf = (index: number): readonly number[] => thermometer.checks[index]!.readings;
  const usable = used.filter((index) => readingsOf(index).length > 0);
  const scatter = pooledScatter(usable.map(readingsOf));
  const step: PointDoubt = {
    source: "display step",
    of: "reading",
    standardUncertainty: resolutionUncertainty(displayStep(thermometer)),
    common: false,
    degreesOfFreedom: Infinity,
    from: thermometer.resolution === null ? "assumed" : "stated",
  };
  return usable.flatMap((index) => {
    const truth = checkTruth(thermometer.checks[index]!);
    if (truth === null) return [];
    const readings = readingsOf(index);
    const doubts: PointDoubt[] = truth.doubts.map((doubt) => ({
      ...doubt,
      of: "truth",
      common: true,
      degreesOfFreedom: Infinity,
    }));
    doubts.push(step);
    if (scatter.standardDeviation > 0)
      doubts.push({
        source: "scatter of readings",
        of: "reading",
        standardUncertainty: scatter.standardDeviation / Math.sqrt(readings.length),
        common: false,
        degreesOfFreedom: scatter.degreesOfFreedom,
        from: "measured",
      });
    return [{ check: index, reading: mean(readings), truth: truth.celsius, doubts }];
  });
};
