import { fitCorrectionLine, fitOffset, type CalibrationLine } from "./calibration-line.ts";
import type { CheckPoint } from "./check-points.ts";
import type { CorrectionComponent, CorrectionModel } from "./correction-model.ts";
import { lineComponents } from "./line-components.ts";
import { assumedScaleDoubt, departuresFromLine, uncheckedScale } from "./unchecked-scale.ts";

const modelOf = (
  { centre, correction, slope }: CalibrationLine,
  components: readonly CorrectionComponent[],
): CorrectionModel => ({ centre, correction, slope, components, from: "measured", accuracy: null });

/** Standard uncertainty of the slope as stated beforehand: what the residuals show does not choose the model. */
const statedSlopeDoubt = (components: readonly CorrectionComponent[]): number =>
  Math.hypot(
    ...components.map((one) =>
      one.shape === "line" && one.source !== "scatter of checks" ? one.perDegree : 0,
    ),
  );

const offsetModel = (points: readonly CheckPoint[], accuracy: number | null): CorrectionModel => {
  const line = fitOffset(points);
  // A specification that the checks contradict limits nothing.
  const limit = accuracy !== null && Math.abs(line.correction) <= accuracy ? accuracy : null;
  return modelOf(line, [...lineComponents(line), uncheckedScale(line.centre, limit)]);
};

/**
 * The correction that check points give (one at least): a line where they lie
 * at readings so far apart that they tell the slope better than it is assumed
 * of a thermometer nobody checked; else one offset, with the doubt of the
 * unchecked scale away from it. `accuracy`: half-width of a specification, degC.
 */
export const checkedCorrection = (
  points: readonly CheckPoint[],
  accuracy: number | null,
): CorrectionModel => {
  const readings = points.map((point) => point.reading);
  if (readings.every((reading) => reading === readings[0])) return offsetModel(points, accuracy);
  const line = fitCorrectionLine(points);
  const components = lineComponents(line);
  if (!(statedSlopeDoubt(components) <= assumedScaleDoubt)) return offsetModel(points, accuracy);
  return modelOf(line, [...components, ...departuresFromLine(readings)]);
};
