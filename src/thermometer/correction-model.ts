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

/** What a doubt about a correction comes from. */
export type CorrectionSource =
  /** Nobody checked it: its +-A specification, or what is assumed in place of one. */
  | "specification"
  /** A correction given with its uncertainty. */
  | "statement"
  | "ice bath"
  /** The pressure, and so the temperature at which water boils there. */
  | "boiling point"
  /** Water in a pot is a little hotter than it boils, by depth and lack of bubbles. */
  | "boiling water"
  | "reference thermometer"
  /** Repeated readings of one check differ. */
  | "scatter of readings"
  | "display step"
  /** The checks lie further from the line, or from one another, than their doubts explain. */
  | "scatter of checks"
  /** The scale where no check reaches. */
  | "unchecked scale"
  /** A thermometer need not follow a straight line between its checks. */
  | "linearity";

/** One source of doubt, as a standard uncertainty that depends on the reading. */
export type CorrectionComponent = {
  readonly source: CorrectionSource;
  /** Infinity where the size of the doubt is taken as known. */
  readonly degreesOfFreedom: number;
  readonly from: ThermometerStatement["from"];
} & (LineDoubt | DistanceDoubt);

/**
 * Doubt about the line itself: with d = reading - centre, the root of
 * atCentre^2 + 2 correlation atCentre perDegree d + perDegree^2 d^2
 * (JCGM 100, H.3.3).
 */
export interface LineDoubt {
  readonly shape: "line";
  readonly atCentre: number;
  readonly perDegree: number;
  /** Of the two, -1 to 1. */
  readonly correlation: number;
}

/** Doubt that grows with the distance from what was checked: perDegree x (distance - free), up to `most`. */
export interface DistanceDoubt {
  readonly shape: "distance";
  /** Readings at which it was checked. */
  readonly checked: readonly number[];
  /** Distance to the nearest of them, or to the range they span. */
  readonly to: "nearest" | "range";
  /** Distance over which there is no doubt yet. */
  readonly free: number;
  readonly perDegree: number;
  /** null: no upper limit. */
  readonly most: number | null;
}

/** What one source adds to the doubt of a correction at one reading, degC. */
export interface CorrectionDoubt {
  readonly source: CorrectionSource;
  readonly standardUncertainty: number;
  readonly from: ThermometerStatement["from"];
}

/** The correction at one reading. */
export interface Correction {
  readonly reading: number;
  readonly correction: number;
  readonly standardUncertainty: number;
  readonly degreesOfFreedom: number;
  /**
   * Half-width of the 95 % interval: Student's t times the standard uncertainty
   * (JCGM 100:2008, G.3), or 0.95 A of a bare +-A specification.
   */
  readonly expanded: number;
}
