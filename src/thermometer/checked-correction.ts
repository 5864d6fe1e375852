import { fitCorrectionLine, fitOffset, type CalibrationLine } from "./calibration-line.ts";
import type { CheckPoint } from "./check-points.ts";
import type { CorrectionComponent, CorrectionModel } from "./correction-model.ts";
import { lineComponents } from "./line-components.ts";
import { assumedScaleDoubt, departuresFromLine, uncheckedScale } from "./unchecked-scale.ts";

/** Slopes beyond this are no thermometer's: readings that hardly follow the truth, confirmed all the same. */
const absurdSlope = 0.5;

const modelOf = (
  { centre, correction, slope }: CalibrationLine,
  components: readonly CorrectionComponent[],
): CorrectionModel => ({ centre, correction, slope, components, from: "measured", accuracy: null });

/**
 * Standard uncertainty of the slope that these checks would give of a faultless
 * thermometer: what was read does not choose the model. Infinity where all were
 * at one temperature.
 */
const slopeDoubt = (points: readonly CheckPoint[]): number => {
  if (points.every((point) => point.truth === points[0]!.truth)) return Infinity;
  const line = fitCorrectionLine(points.map((point) => ({ ...point, reading: point.truth })));
  const perDegree = lineComponents(line).map((one) => (one.shape === "line" ? one.perDegree : 0));
  return Math.hypot(...perDegree);
};

const offsetModel = (points: readonly CheckPoint[], accuracy: number | null): CorrectionModel => {
  const line = fitOffset(points);
  // A specification that the checks contradict limits nothing.
  const limit = accuracy !== null && Math.abs(line.correction) <= accuracy ? accuracy : null;
  return modelOf(line, [...lineComponents(line), uncheckedScale(line.centre, limit)]);
};

/**
 * The correction that check points give (one at least): a line where they lie
 * at temperatures so far apart that they tell the slope better than it is assumed
 * of a thermometer nobody checked; else one offset, with the doubt of the
 * unchecked scale away from it. `accuracy`: half-width of a specification, degC.
 */
export const checkedCorrection = (
  points: readonly CheckPoint[],
  accuracy: number | null,
): CorrectionModel => {
  if (slopeDoubt(points) > assumedScaleDoubt) return offsetModel(points, accuracy);
  const line = fitCorrectionLine(points);
  if (!(Math.abs(line.slope) < absurdSlope)) return offsetModel(points, accuracy);
  const readings = points.map((point) => point.reading);
  return modelOf(line, [...lineComponents(line), ...departuresFromLine(readings)]);
};
