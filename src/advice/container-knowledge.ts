import type { ResponseFigure } from "../container/container-response.ts";
import type { Container } from "../kitchen/kitchen.ts";
import type { AdviceInput, AdviceTest } from "./advice-input.ts";
import type { ContainerAdvice, ContainerFigure } from "./response-types.ts";
import { lagPrior, lostSharePrior, type PriorFigure } from "./response-prior.ts";

/** A figure measured in one test. */
interface Measured extends ResponseFigure {
  readonly testId: string;
  readonly appliance: string;
}

/**
 * A container measured in another appliance behaves there as that appliance
 * lets it: stirred or still, covered or open. This part of the value is added
 * in quadrature to the uncertainty of what all its tests say together: no number
 * of them takes it away (an assumption).
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
  const figure = (pick: "shareLost" | "lagMinutes", prior: PriorFigure, elsewhere: number) => {
    const measured = own.flatMap(({ id, setUp, settled }): Measured[] => {
      const found = settled?.response?.[pick] ?? null;
      return found === null ? [] : [{ testId: id, appliance: setUp.appliance, ...doubted(found) }];
    });
    return combined(prior, measured, (one) =>
      appliance === null || one === appliance ? 0 : elsewhere,
    );
  };
  return {
    container: container.id,
    shareLost: figure("shareLost", lostSharePrior(container), carriedOver.lost),
    lagMinutes: figure("lagMinutes", lagPrior(container), carriedOver.lag),
  };
};

/** Nothing is known better than this, which keeps weights finite. */
const leastUncertainty = 1e-6;

const widened = ({ value, standardUncertainty }: ResponseFigure, by: number): ResponseFigure => ({
  value,
  standardUncertainty: Math.max(leastUncertainty, Math.hypot(standardUncertainty, by * value)),
});

const doubted = (found: ResponseFigure): ResponseFigure => widened(found, fromTestToTest);

const weightedMean = (figures: readonly ResponseFigure[]): ResponseFigure => {
  let [precision, sum] = [0, 0];
  for (const { value, standardUncertainty } of figures) {
    const own = standardUncertainty ** -2;
    precision += own;
    sum += value * own;
  }
  return { value: sum / precision, standardUncertainty: 1 / Math.sqrt(precision) };
};

/** @param apart what an appliance's tests leave open here, as part of the value */
const combined = (
  prior: PriorFigure,
  measured: readonly Measured[],
  apart: (appliance: string) => number,
): ContainerFigure => {
  const assumed = { value: prior.mean, standardUncertainty: prior.standardDeviation };
  const appliances = [...new Set(measured.map(({ appliance }) => appliance))];
  const found = appliances.map((id) =>
    widened(weightedMean(measured.filter(({ appliance }) => appliance === id)), apart(id)),
  );
  return {
    ...weightedMean([assumed, ...found]),
    from: measured.length === 0 ? "assumed" : "measured",
    testIds: measured.map(({ testId }) => testId),
  };
};

/** Every container of the kitchen, by all its tests. */
export const containersOf = ({ kitchen, tests }: AdviceInput): readonly ContainerAdvice[] =>
  kitchen.containers.map((container) => containerIn(container, null, tests));

/** A container that lost more than this would hardly be in its bath. */
const mostLost = 0.5;

/** The bath in which food stands at `level`, by what is known of its container. */
export const bathAround = (level: number, room: number, { shareLost }: ContainerAdvice): number =>
  room + (level - room) / (1 - Math.min(mostLost, Math.max(0, shareLost.value)));
