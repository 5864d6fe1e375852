/** How the food moves about its level in a set-up: from the test that comes nearest. */
import { acceptableOffsets } from "../culture/acceptance.ts";
import { holdScenarios } from "../culture/hold-plays.ts";
import { scenarioPlays, type WeightedPlays } from "../culture/probability.ts";
import { testedHours, type Scenarios } from "../culture/scenarios.ts";
import type { Requirement } from "../culture/verdict-types.ts";
import { attenuation } from "../container/attenuation.ts";
import type { ResponseFigure } from "../container/container-response.ts";
import type { Setting, SetUp } from "../kitchen/kitchen.ts";
import {
  assumedSwing,
  carriedSwing,
  sameSwing,
  withSwing,
  type CarriedSwing,
} from "./carried-swing.ts";
import { gatherPlays, type GatheredPlays } from "./gathered-plays.ts";
import type { HeldTest, Response } from "./response.ts";

export interface CourseShape {
  /** The test it is taken from; null where the appliance has none. */
  readonly reference: HeldTest | null;
  /** Hold mean the courses lie about, degC. */
  readonly level: number;
  /** Band about the level, degC. */
  readonly band: { readonly low: number; readonly high: number };
  /** Peak to peak of the swing as it reaches this container; null where none is known. */
  readonly peakToPeak: number | null;
  /** Doubt about the level in the culture's hours where no test shows it, degC. */
  readonly assumedDeviation: number;
  /** What the culture's hours may look like. */
  readonly outlook: (requirement: Requirement) => CourseOutlook;
}

export interface CourseOutlook {
  readonly parts: readonly WeightedPlays[];
  readonly gathered: GatheredPlays;
}

/** Distance between settings: degrees for steps; another program or mark is as far as any. */
const apart = (a: Setting, b: Setting): number =>
  a.kind === "step" && b.kind === "step" ? Math.abs(a.celsius - b.celsius) : 0;

/** Same container first, then a hold long enough, then the nearest setting, then the longest. */
const nearest = (tests: readonly HeldTest[], { setting, container }: SetUp): HeldTest | null => {
  const ranked = tests.toSorted(
    (a, b) =>
      Number(b.setUp.container === container) - Number(a.setUp.container === container) ||
      Number(a.settled.tooLittle) - Number(b.settled.tooLittle) ||
      apart(a.setUp.setting, setting) - apart(b.setUp.setting, setting) ||
      testedHours(b.settled.evidence.hold) - testedHours(a.settled.evidence.hold),
  );
  return ranked[0] ?? null;
};

const lagOf = ({ containers }: Response, id: string): ResponseFigure =>
  containers.find(({ container }) => container.id === id)!.known.lagMinutes;

/**
 * Shapes by reference and container, each made once.
 *
 * @param slowShare what is left of the slow movement about the level: 1, or less
 *   where the room that moves it is to be kept steadier than it was
 */
export const courseShapes = (
  response: Response,
  slowShare = 1,
): ((setUp: SetUp) => CourseShape) => {
  const made = new Map<string, CourseShape>();
  return (setUp) => {
    const reference = nearest(response.tests, setUp);
    const key = JSON.stringify([reference?.id ?? null, setUp.container]);
    const shape =
      made.get(key) ??
      (reference === null
        ? assumedShape(response, setUp.container)
        : testedShape(response, reference, setUp.container, slowShare));
    made.set(key, shape);
    return shape;
  };
};

const testedShape = (
  response: Response,
  reference: HeldTest,
  container: string,
  slowShare: number,
): CourseShape => {
  const { place, evidence } = reference.settled;
  const { hold } = evidence;
  const same = place === "food" && reference.setUp.container === container;
  const from = place === "bath" ? null : lagOf(response, reference.setUp.container);
  const to = lagOf(response, container);
  const carried: CarriedSwing = same
    ? sameSwing
    : carriedSwing(hold.swing, from, to, response.thermostat !== false);
  const middle = carried.factors.reduce((sum, { factor, weight }) => sum + factor * weight, 0);
  const peakToPeak = hold.swing === null ? 2 * carried.added : middle * hold.swing.peakToPeak;
  const moved = (edge: number): number =>
    hold.swing === null ? edge : edge * Math.max(middle, 1 / 4);
  const fitted = (sets: readonly Scenarios[], requirement: Requirement): WeightedPlays[] =>
    carried.factors.map(({ factor, weight }) => ({
      weight,
      plays: sets.flatMap((scenarios) => {
        const fast = withSwing(scenarios.fast, hold.swing, factor, carried.added);
        return scenarioPlays({ ...calmed(scenarios, hold.mean, slowShare), fast }, requirement);
      }),
    }));
  return {
    reference,
    level: hold.mean,
    band: {
      low: moved(hold.band.low - hold.mean) - carried.added,
      high: moved(hold.band.high - hold.mean) + carried.added,
    },
    peakToPeak: peakToPeak > 0 ? peakToPeak : null,
    assumedDeviation: 0,
    outlook: memo((requirement) =>
      fitted(holdScenarios(requirement.hours, evidence).whole, requirement),
    ),
  };
};

const calmed = (scenarios: Scenarios, level: number, share: number): Scenarios =>
  share === 1
    ? scenarios
    : {
        ...scenarios,
        paths: scenarios.paths.map((path) => path.map((value) => level + share * (value - level))),
      };

const memo = (
  make: (requirement: Requirement) => readonly WeightedPlays[],
): CourseShape["outlook"] => {
  const made = new Map<Requirement, CourseOutlook>();
  return (requirement) => {
    const kept = made.get(requirement);
    if (kept !== undefined) return kept;
    const parts = make(requirement);
    const outlook = { parts, gathered: gatherPlays(parts) };
    made.set(requirement, outlook);
    return outlook;
  };
};

/** Slow movement over a culture's hours where no test shows it, degC (an assumption). */
const assumedWander = { thermostat: 0.3, none: 1.5, unknown: 0.8 } as const;
const sineValues = 24;

/** Nothing tested: the assumed swing of a thermostat as it reaches the container. */
const assumedShape = (response: Response, container: string): CourseShape => {
  const { thermostat } = response;
  const reached = attenuation(lagOf(response, container), assumedSwing.periodMinutes).value;
  const amplitude = thermostat === false ? 0 : (reached * assumedSwing.peakToPeak) / 2;
  const course = Float64Array.from(
    { length: sineValues },
    (_, index) => amplitude * Math.sin(Math.PI * ((index + 0.5) / sineValues - 0.5)),
  );
  const outlook = memo((requirement) => {
    const ceiling = requirement.ceiling ?? Infinity;
    const intervals = acceptableOffsets(course, amplitude, { ...requirement, ceiling });
    return [{ weight: 1, plays: [{ intervals, belowCeiling: ceiling - amplitude }] }];
  });
  return {
    reference: null,
    level: 0,
    band: { low: -amplitude, high: amplitude },
    peakToPeak: amplitude > 0 ? 2 * amplitude : null,
    assumedDeviation:
      thermostat === null
        ? assumedWander.unknown
        : thermostat
          ? assumedWander.thermostat
          : assumedWander.none,
    outlook,
  };
};
