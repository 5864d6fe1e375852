import type { ResponseFigure } from "./container-response.ts";
import { usualStep } from "./course.ts";
import type { LagProblem } from "./lag-residuals.ts";
import { lagParameters } from "./lag-residuals.ts";
import { searchLag } from "./lag-search.ts";
import { lagUncertainty } from "./lag-uncertainty.ts";

const leastReadings = 12;
/** A lag known no better than this share of itself is not known. */
const mostRelativeUncertainty = 0.7;
/** By so many standard uncertainties, as the sum of squares counts them, both ends of the range must fall short. */
const leastEvidence = 4;

/**
 * The lag in minutes with which the food follows its bath, by least squares.
 *
 * @returns null where the readings cannot tell: fewer than 12, a bath too flat,
 *   the best lag at an end of the range, below the sampling interval of either
 *   probe, or not better than the ends by more than chance would be
 */
export const fitLag = (problem: LagProblem): ResponseFigure | null => {
  const readings = problem.food.minutes.length;
  if (readings < leastReadings || problem.bath.minutes.length < leastReadings) return null;
  const found = searchLag(problem);
  if (found === null) return null;
  const sampling = Math.max(usualStep(problem.bath.minutes), usualStep(problem.food.minutes));
  if (found.lag < sampling) return null;
  const standardUncertainty = lagUncertainty(problem, found.lag);
  if (!(standardUncertainty <= mostRelativeUncertainty * found.lag)) return null;
  const variance = found.squares / (readings - lagParameters);
  if (found.squaresAtEnd - found.squares < leastEvidence ** 2 * variance) return null;
  return { value: found.lag, standardUncertainty };
};
