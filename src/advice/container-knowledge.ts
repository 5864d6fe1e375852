import type { ResponseFigure } from "../container/container-response.ts";
import type { Container } from "../kitchen/kitchen.ts";
import type { AdviceInput, AdviceTest } from "./advice-input.ts";
import type { ContainerAdvice, ContainerFigure } from "./response-types.ts";
import { lagPrior, lostSharePrior, type PriorFigure } from "./response-prior.ts";

/** A figure measured in one test. */
interface Measured {
  readonly testId: string;
  readonly value: number;
  readonly standardUncertainty: number;
}

/**
 * A container measured in another appliance behaves there as that appliance
 * lets it: stirred or still, covered or open. This part of the value is added
 * in quadrature to its uncertainty (an assumption).
 */
const carriedOver = { lost: 0.5, lag: 0.4 } as const;

/** Two tests of one container differ by this part of the value, whatever their readings say (an assumption). */
const fromTestToTest = 0.15;

/**
 * What is known of a container in one appliance: the assumption for how it
 * stands, sharpened by every test in which its food and its bath were measured
 * together. Means weighted by the inverse of their variances, as for
 * independent normal figures (JCGM 100:2008, 5.1; Gelman et al., Bayesian Data
 * Analysis, 2.5, from memory).
 *
 * @param appliance id; null: in no particular one, every test counts as its own
 */
export const containerIn = (
  container: Container,
  appliance: string | null,
  tests: readonly AdviceTest[],
): ContainerAdvice => {
  const own = tests.filter(({ setUp }) => setUp.container === container.id);
  const measured = (pick: "shareLost" | "lagMinutes", elsewhere: number): readonly Measured[] =>
    own.flatMap(({ id, setUp, settled }) => {
      const found = settled?.response?.[pick] ?? null;
      const apart = appliance === null || setUp.appliance === appliance ? 0 : elsewhere;
      return found === null ? [] : [{ testId: id, ...doubted(found, apart) }];
    });
  return {
    container: container.id,
    shareLost: combined(lostSharePrior(container), measured("shareLost", carriedOver.lost)),
    lagMinutes: combined(lagPrior(container), measured("lagMinutes", carriedOver.lag)),
  };
};

const doubted = ({ value, standardUncertainty }: ResponseFigure, elsewhere: number) => ({
  value,
  standardUncertainty: Math.hypot(standardUncertainty, fromTestToTest * value, elsewhere * value),
});

const combined = (prior: PriorFigure, measured: readonly Measured[]): ContainerFigure => {
  let precision = prior.standardDeviation ** -2;
  let sum = prior.mean * precision;
  for (const { value, standardUncertainty } of measured) {
    const own = standardUncertainty ** -2;
    precision += own;
    sum += value * own;
  }
  return {
    value: sum / precision,
    standardUncertainty: 1 / Math.sqrt(precision),
    from: measured.length === 0 ? "assumed" : "measured",
    testIds: measured.map(({ testId }) => testId),
  };
};

/** Every container of the kitchen, by all its tests. */
export const containersOf = ({ kitchen, tests }: AdviceInput): readonly ContainerAdvice[] =>
  kitchen.containers.map((container) => containerIn(container, null, tests));
