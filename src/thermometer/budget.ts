import { celsiusDifference, type CelsiusDifference } from "../quantity.ts";

/** What is known of the thermometer behind the readings; everything in degC. */
export interface ThermometerStatement {
  /** Added to every reading. */
  readonly correction: CelsiusDifference;
  /** Standard uncertainty of the corrected reading from the thermometer alone. */
  readonly standardUncertainty: CelsiusDifference;
  readonly from: "measured" | "stated" | "assumed";
  /** Half-width of a rectangular +-A specification where that is what is known; else null. */
  readonly accuracy: CelsiusDifference | null;
}

/**
 * Standard uncertainty of a quantity known only to lie within +-halfWidth,
 * every place equally likely: halfWidth / sqrt(3).
 *
 * Source: JCGM 100:2008, 4.3.7.
 */
export const rectangularUncertainty = (halfWidth: number): CelsiusDifference =>
  celsiusDifference(halfWidth / Math.sqrt(3));

/**
 * Standard uncertainty from a display that shows multiples of `resolution`:
 * resolution / sqrt(12).
 *
 * Source: JCGM 100:2008, F.2.2.1.
 */
export const resolutionUncertainty = (resolution: number): CelsiusDifference =>
  celsiusDifference(resolution / Math.sqrt(12));

/** A thermometer known by its +-accuracy specification. */
export const specifiedThermometer = (
  accuracy: CelsiusDifference,
  from: "stated" | "assumed",
): ThermometerStatement => ({
  correction: celsiusDifference(0),
  standardUncertainty: rectangularUncertainty(accuracy),
  from,
  accuracy,
});

/** A thermometer whose correction was found by a check, with its standard uncertainty. */
export const correctedThermometer = (
  correction: CelsiusDifference,
  standardUncertainty: CelsiusDifference,
): ThermometerStatement => ({ correction, standardUncertainty, from: "stated", accuracy: null });

/** Half-width assumed of a thermometer nobody described. */
export const assumedAccuracy = celsiusDifference(1);

/**
 * What is assumed when nothing is said: +-1 degC, a usual specification of
 * unchecked kitchen thermometers and simple loggers (common practice, no source).
 */
export const assumedThermometer: ThermometerStatement = specifiedThermometer(
  assumedAccuracy,
  "assumed",
);
