import type { ResponseFigure } from "./container-response.ts";
import { usualStep } from "../stats/time-weights.ts";
import { lagParameters, type LagProblem } from "./lag-residuals.ts";
import { searchLag } from "./lag-search.ts";
import { type LagDoubts, lagUncertainty } from "./lag-uncertainty.ts";

const leastReadings = 12;
/** A lag known no better than this share of itself is not known. */
const mostRelativeUncertainty = 0.7;
/** By so many standard deviations of the residuals, in quadrature, both ends of the range must fit worse. */
const leastEvidence = 4;

/**
 * The lag in minutes with which the food follows its bath, by least squares.
 *
 * @returns null where the readings cannot tell: fewer than 12 of either probe,
 *   the best lag at an end of the range (0.2 min to 24 h), below the interval
 *   between readings, not better than the ends by more than chance, or with a
 *   standard uncertainty above 0.7 of itself
 */
export const fitLag = (problem: LagProblem, doubts: LagDoubts): ResponseFigure | null => {
  const readings = problem.food.minutes.length;
  if (readings < leastReadings || problem.bath.minutes.length < leastReadings) return null;
  const found = searchLag(problem);
  if (found === null) return null;
  const interval = Math.max(usualStep(problem.bath.minutes), usualStep(problem.food.minutes));
  if (found.lag < interval) return null;
  const variance = found.squares / (readings - lagParameters);
  if (found.squaresAtEnd - found.squares < leastEvidence ** 2 * variance) return null;
  const standardUncertainty = lagUncertainty(problem, found.lag, doubts);
  if (!(standardUncertainty <= mostRelativeUncertainty * found.lag)) return null;
  return { value: found.lag, standardUncertainty };
};
