import type { Hold, HoldReadings } from "../hold/hold.ts";
import { cholesky, multiplyLower } from "../stats/cholesky.ts";
import { normalDraws } from "../stats/normal-sequence.ts";
import { fastPart } from "./fast-part.ts";
import { spreadFactor, type FastResidual } from "./fast-residual.ts";
import { slowBlocks } from "./slow-blocks.ts";
import {
  fitSlowChange,
  predictSlowChange,
  type SlowBlocks,
  type SlowFit,
  type SlowPrediction,
} from "./slow-change.ts";
import { slowPrior } from "./slow-prior.ts";

/** What the culture's whole hours may look like, given the hours that were tested. */
export interface Scenarios {
  /** Hours from the start of the hold at which each path is given; evenly spread over the culture's hours. */
  readonly hours: Float64Array;
  /** Slow part, degC as read, one array per scenario, all equally likely. */
  readonly paths: readonly Float64Array[];
  readonly fast: FastResidual;
  /** By how much the fast part is widened or narrowed, one factor per scenario. */
  readonly fastScales: Float64Array;
  /** Standard uncertainty of the level in the hours after those tested, degC; 0 when all were. */
  readonly unseenUncertainty: number;
}

export interface ScenarioEvidence {
  readonly hold: Hold;
  readonly readings: HoldReadings;
  /** From switch-on to the hold; null where the warm-up was not seen. */
  readonly warmUpMinutes: number | null;
  readonly resolution: number;
  /** Lowest to highest room temperature the batch may meet, degC; null where nobody said. */
  readonly roomRange: number | null;
  /** Whether a thermostat is known to be at work; null where nobody knows. */
  readonly thermostat?: boolean | null;
}

/** From the start of the hold to its end, hours. */
export const testedHours = (hold: Hold): number => (hold.toMinute - hold.fromMinute) / 60;

const scenarioCount = 256;
const nodeCount = 40;
const fastCount = 12;

/**
 * Draws the scenarios for a culture that needs `hours` hours, beginning
 * `startHour` hours after the start of the hold. Deterministic.
 *
 * @param alsoSeen what other tests of the set-up say of each strength of the
 *   slow part (their `strengthLikelihoods`, summed); empty for one test alone
 */
export const drawScenarios = (
  evidence: ScenarioEvidence,
  hours: number,
  startHour = 0,
  alsoSeen: readonly number[] = [],
): Scenarios => {
  const { resolution, roomRange, warmUpMinutes, thermostat = null } = evidence;
  // Cultures of the same hours, and advice on the same test, ask for the same scenarios.
  const kept = keptScenarios.get(evidence.readings) ?? new Map<string, Scenarios>();
  keptScenarios.set(evidence.readings, kept);
  const known = [resolution, roomRange, warmUpMinutes, thermostat];
  const key = JSON.stringify([hours, startHour, alsoSeen, known]);
  const scenarios = kept.get(key) ?? freshScenarios(evidence, hours, startHour, alsoSeen);
  kept.set(key, scenarios);
  return scenarios;
};

/** By the readings they were drawn from, for as long as those are kept; a hold belongs to its readings. */
const keptScenarios = new WeakMap<HoldReadings, Map<string, Scenarios>>();

const freshScenarios = (
  evidence: ScenarioEvidence,
  hours: number,
  startHour: number,
  alsoSeen: readonly number[],
): Scenarios => {
  const { hold, readings, resolution } = evidence;
  const blocks = slowBlocks(hold, readings, resolution);
  const nodes = Float64Array.from(
    { length: nodeCount },
    (_, index) => startHour + ((index + 0.5) * hours) / nodeCount,
  );
  const fits = weightedFits(blocks, evidence, alsoSeen);
  const best = fits.reduce((a, b) => (b.weight > a.weight ? b : a));
  const draws = standardDraws();
  const paths = drawPaths(fits, blocks, nodes, draws);
  const fast = fastPart(best.fit, blocks, evidence, fastCount);
  return {
    hours: nodes,
    paths,
    fast,
    fastScales: Float64Array.from(draws, (row) =>
      spreadFactor(row[nodeCount]!, fast.degreesOfFreedom),
    ),
    unseenUncertainty: unseenUncertainty(paths, nodes, hold),
  };
};

/** One number per node and one for the size of the fast part; the same every time, so made once. */
const standardDraws = (): readonly Float64Array[] =>
  (keptDraws ??= normalDraws(scenarioCount, nodeCount + 1));
let keptDraws: readonly Float64Array[] | undefined;

interface WeightedFit {
  readonly fit: SlowFit;
  readonly weight: number;
}

const priorOf = ({ hold, roomRange, warmUpMinutes, thermostat = null }: ScenarioEvidence) =>
  slowPrior({ thermostat, cycling: hold.swing !== null, roomRange, warmUpMinutes });

/**
 * How well each strength of the slow part explains one test, as log
 * likelihoods in the order of the prior. The strengths belong to the set-up, not
 * to the night, so those of several tests add up.
 */
export const strengthLikelihoods = (evidence: ScenarioEvidence): readonly number[] => {
  const blocks = slowBlocks(evidence.hold, evidence.readings, evidence.resolution);
  return priorOf(evidence).map(
    ({ strengths }) => fitSlowChange(blocks, strengths)?.logLikelihood ?? 0,
  );
};

/** Prior times likelihood, normalised (Bayes). */
const weightedFits = (
  blocks: SlowBlocks,
  evidence: ScenarioEvidence,
  alsoSeen: readonly number[],
): readonly WeightedFit[] => {
  const scored = priorOf(evidence).flatMap(({ strengths, weight }, index) => {
    const fit = fitSlowChange(blocks, strengths);
    const others = alsoSeen[index] ?? 0;
    return fit === null ? [] : [{ fit, score: Math.log(weight) + fit.logLikelihood + others }];
  });
  const highest = Math.max(...scored.map(({ score }) => score));
  const raw = scored.map(({ fit, score }) => ({ fit, weight: Math.exp(score - highest) }));
  const total = raw.reduce((sum, { weight }) => sum + weight, 0);
  return raw.map(({ fit, weight }) => ({ fit, weight: weight / total }));
};

const drawPaths = (
  fits: readonly WeightedFit[],
  blocks: SlowBlocks,
  nodes: Float64Array,
  draws: readonly Float64Array[],
): Float64Array[] => {
  const paths: Float64Array[] = [];
  let cumulative = 0;
  for (const { fit, weight } of fits) {
    cumulative += weight;
    // Systematic allocation: each fit gets its share of the draws to within one.
    const upTo = Math.min(scenarioCount, Math.floor(cumulative * scenarioCount + 0.5));
    if (upTo <= paths.length) continue;
    const prediction = predictSlowChange(fit, blocks, nodes);
    const lower = jitteredCholesky(prediction, nodes.length);
    while (paths.length < upTo)
      paths.push(onePath(prediction, lower, draws[paths.length]!.subarray(0, nodes.length)));
  }
  return paths;
};

/** The predicted covariance is singular to rounding where a node was fully seen; a hair of variance mends it. */
const jitteredCholesky = (prediction: SlowPrediction, size: number): Float64Array => {
  for (let jitter = 1e-8; jitter < 1; jitter *= 10) {
    const matrix = Float64Array.from(prediction.covariance);
    for (let i = 0; i < size; i += 1) matrix[i * size + i]! += jitter;
    const lower = cholesky(matrix, size);
    if (lower !== null) return lower;
  }
  return new Float64Array(size * size);
};

const onePath = (
  prediction: SlowPrediction,
  lower: Float64Array,
  normals: Float64Array,
): Float64Array =>
  multiplyLower(lower, normals.length, normals).map((value, i) => value + prediction.means[i]!);

const unseenUncertainty = (
  paths: readonly Float64Array[],
  nodes: Float64Array,
  hold: Hold,
): number => {
  const tested = testedHours(hold);
  const unseen = Array.from(nodes.keys()).filter((index) => nodes[index]! > tested);
  if (unseen.length === 0) return 0;
  let squares = 0;
  for (const path of paths) {
    for (const index of unseen) squares += (path[index]! - hold.mean) ** 2;
  }
  const overHours = squares / (paths.length * unseen.length);
  return Math.sqrt((overHours * unseen.length) / nodes.length);
};
