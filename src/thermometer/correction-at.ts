import { celsiusDifference } from "../quantity.ts";
import { studentTQuantile } from "../stats/student-t.ts";
import { effectiveDegreesOfFreedom } from "../stats/effective-degrees-of-freedom.ts";
import type { ThermometerStatement } from "./budget.ts";
import { componentUncertainty } from "./component-uncertainty.ts";
import type { Correction, CorrectionDoubt, CorrectionModel } from "./correction-model.ts";

/** Of the 95 % interval: the middle 95 % of a bare specification's rectangle, else by Student's t. */
const expand = (
  { accuracy }: CorrectionModel,
  standardUncertainty: number,
  degreesOfFreedom: number,
): number =>
  accuracy === null
    ? studentTQuantile(0.975, degreesOfFreedom) * standardUncertainty
    : 0.95 * accuracy;

/**
 * The correction to add to a `reading`, degC, with its standard uncertainty and
 * effective degrees of freedom: the components are independent, so they add in
 * quadrature (JCGM 100, 5.1.2 and G.4.1). The uncertainty is the thermometer's
 * alone; display step and scatter of the reading itself come on top. Readings
 * far from every check are allowed: the uncertainty says what that costs.
 */
export const correctionAt = (model: CorrectionModel, reading: number): Correction => {
  const shares = model.components.map((component) => ({
    standardUncertainty: componentUncertainty(component, model.centre, reading),
    degreesOfFreedom: component.degreesOfFreedom,
  }));
  const standardUncertainty = Math.hypot(...shares.map((share) => share.standardUncertainty));
  const degreesOfFreedom = effectiveDegreesOfFreedom(shares);
  return {
    reading,
    correction: model.correction + model.slope * (reading - model.centre),
    standardUncertainty,
    degreesOfFreedom,
    expanded: expand(model, standardUncertainty, degreesOfFreedom),
  };
};

/**
 * What each source adds to the standard uncertainty of the correction at a
 * `reading`, degC, largest first. Components of one source, such as the ice of
 * two checks, are independent and stand together in quadrature.
 */
export const doubtsAt = (model: CorrectionModel, reading: number): readonly CorrectionDoubt[] => {
  const doubts = new Map<string, CorrectionDoubt>();
  for (const component of model.components) {
    const { source, from } = component;
    const size = componentUncertainty(component, model.centre, reading);
    const so = doubts.get(source)?.standardUncertainty ?? 0;
    doubts.set(source, { source, from, standardUncertainty: Math.hypot(so, size) });
  }
  return [...doubts.values()].toSorted((a, b) => b.standardUncertainty - a.standardUncertainty);
};

/** Readings, degC, with their corrections added, in a new array; NaN stays NaN. */
export const applyCorrection = (model: CorrectionModel, celsius: Float64Array): Float64Array => {
  const { centre, correction, slope } = model;
  const corrected = new Float64Array(celsius.length);
  for (let i = 0; i < celsius.length; i++)
    corrected[i] = celsius[i]! + (correction + slope * (celsius[i]! - centre));
  return corrected;
};

/** What is known of the thermometer at one reading, degC, for a verdict's uncertainty budget. */
export const statementAt = (model: CorrectionModel, reading: number): ThermometerStatement => {
  const { correction, standardUncertainty } = correctionAt(model, reading);
  return {
    correction: celsiusDifference(correction),
    standardUncertainty: celsiusDifference(standardUncertainty),
    from: model.from,
    accuracy: model.accuracy,
  };
};
