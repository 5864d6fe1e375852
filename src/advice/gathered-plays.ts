import { offsetCdf, type OffsetDistribution } from "../culture/offset-distribution.ts";
import type { RequirementProbability, WeightedPlays } from "../culture/probability.ts";

/** Weighted ends of intervals on an even grid: the sum of weight times distribution function is a probability. */
interface Ends {
  /** Grid number of the first weight. */
  readonly first: number;
  readonly weights: Float64Array;
}

/** Plays with all their ends gathered on one grid, for many questions to the same plays. */
export interface GatheredPlays {
  readonly met: Ends;
  /** null without a ceiling. */
  readonly below: Ends | null;
}

/**
 * Width of the grid, degC. An end is shared between its two neighbours in
 * proportion, so that the error is of second order: below 1e-4 where the
 * offset's standard deviation is 0.1 degC or more.
 */
const width = 0.02;
/** Offsets beyond this are as good as infinite, degC. */
const far = 100;

/** Gathers plays; `weight`s as in weightedProbability. */
export const gatherPlays = (parts: readonly WeightedPlays[]): GatheredPlays => {
  const met: WeightedEnd[] = [];
  const below: WeightedEnd[] = [];
  let hasCeiling = false;
  for (const { weight, plays } of parts) {
    const each = weight / plays.length;
    for (const { intervals, belowCeiling } of plays) {
      for (const { from, to } of intervals) met.push([to, each], [from, -each]);
      below.push([belowCeiling, each]);
      hasCeiling ||= belowCeiling < Infinity;
    }
  }
  return { met: gathered(met), below: hasCeiling ? gathered(below) : null };
};

type WeightedEnd = readonly [at: number, weight: number];

const gathered = (ends: readonly WeightedEnd[]): Ends => {
  const places = ends.map(([at]) => Math.min(far, Math.max(-far, at)) / width);
  const first = Math.floor(places.reduce((a, b) => Math.min(a, b), Infinity));
  const last = Math.ceil(places.reduce((a, b) => Math.max(a, b), -Infinity));
  if (ends.length === 0) return { first: 0, weights: new Float64Array(0) };
  const weights = new Float64Array(last - first + 2);
  for (const [index, [, weight]] of ends.entries()) {
    const place = places[index]! - first;
    const lower = Math.floor(place);
    weights[lower]! += weight * (lower + 1 - place);
    weights[lower + 1]! += weight * (place - lower);
  }
  return { first, weights };
};

/** Probability that a requirement is met where every course is moved up by `by` degC; see weightedProbability. */
export const gatheredProbability = (
  { met, below }: GatheredPlays,
  by: number,
  offset: OffsetDistribution,
): RequirementProbability => ({
  met: Math.min(1, Math.max(0, weighted(met, by, offset))),
  ceilingPassed: below === null ? null : 1 - Math.min(1, weighted(below, by, offset)),
});

const weighted = ({ first, weights }: Ends, by: number, offset: OffsetDistribution): number => {
  let sum = 0;
  for (let i = 0; i < weights.length; i += 1) {
    if (weights[i] !== 0) sum += weights[i]! * offsetCdf((first + i) * width - by, offset);
  }
  return sum;
};
