import type { CelsiusDifference } from "../quantity.ts";
import type { ThermometerStatement } from "./budget.ts";

/**
 * A thermometer's correction as a straight line over its readings, with where
 * its doubt comes from. Plain data; degC.
 */
export interface CorrectionModel {
  /** Reading about which the line is stated. */
  readonly centre: number;
  /** To add to a reading at the centre. */
  readonly correction: number;
  /** Change of the correction per degC of reading. */
  readonly slope: number;
  readonly components: readonly CorrectionComponent[];
  readonly from: ThermometerStatement["from"];
  /** Half-width of a rectangular +-A specification where that is all that is known; else null. */
  readonly accuracy: CelsiusDifference | null;
}

/** One source of doubt: standard uncertainty hypot(atCentre, perDegree x (reading - centre)). */
export interface CorrectionComponent {
  readonly source: string;
  readonly atCentre: number;
  readonly perDegree: number;
  readonly degreesOfFreedom: number;
  readonly from: ThermometerStatement["from"];
}

/** The correction at one reading. */
export interface Correction {
  readonly reading: number;
  readonly correction: number;
  readonly standardUncertainty: number;
  readonly degreesOfFreedom: number;
  /** Half-width of the 95 % interval: Student's t times the standard uncertainty (JCGM 100:2008, G.3). */
  readonly expanded: number;
}
