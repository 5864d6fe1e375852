import type { Appliance, Container, SetUp } from "../kitchen/kitchen.ts";
import { setUpKey } from "../kitchen/set-up.ts";
import { bayesianRegression, type Regression } from "../stats/bayesian-regression.ts";
import type { AdviceInput, AdviceTest, RoomFigure, SettledTest } from "./advice-input.ts";
import { bathAround, containerIn } from "./container-knowledge.ts";
import { responseDesign, type DesignTerm, type ResponseDesign } from "./response-design.ts";
import { roomPrior, scatterPrior, standsIn, usualRoom } from "./response-prior.ts";
import type { ContainerAdvice } from "./response-types.ts";

/** A test that settled. */
export type HeldTest = AdviceTest & { readonly settled: SettledTest };

/** A container with what is known of it in one appliance. */
export interface KnownContainer {
  readonly container: Container;
  readonly known: ContainerAdvice;
}

/** How an appliance responds: what was assumed, sharpened by its tests. */
export interface Response {
  readonly appliance: Appliance;
  /** Those that may stand in it: by what it is, or because one was tested there. */
  readonly containers: readonly KnownContainer[];
  /** As said, or true where a test showed a regular cycle; null: not known. */
  readonly thermostat: boolean | null;
  /** Tests the response rests on. */
  readonly tests: readonly HeldTest[];
  readonly design: ResponseDesign;
  readonly fit: Regression;
  /** One per test: relative precision. */
  readonly weights: readonly number[];
  readonly rows: readonly Float64Array[];
  /** The room a batch may meet. */
  readonly room: RoomFigure;
}

/** A hold seen for so short a time may still be creeping: it counts as part of a test (an assumption). */
const shortTestWeight = 0.25;

/**
 * Fits an appliance's response to its tests: Bayesian linear regression of the
 * hold mean on setting, container and room (see `bayesianRegression`), with the
 * priors of response-prior.ts. Each run counts alike, less where the room was
 * not measured and the appliance follows it, or where the hold was short.
 */
export const fitResponse = (appliance: Appliance, input: AdviceInput): Response => {
  const tests = input.tests.filter(
    (test): test is HeldTest => test.settled !== null && test.setUp.appliance === appliance.id,
  );
  const containers = containersFor(appliance, tests, input);
  const thermostat = appliance.thermostat ?? (cycles(tests) ? true : null);
  const design = responseDesign(
    appliance,
    roomPrior(thermostat, quickestWarmUp(tests)),
    containers,
  );
  const rows = tests.map((test) => testRow(design, containers, test));
  const weights = tests.map((test) => testWeight(design.terms, test));
  const fit = bayesianRegression(
    rows,
    tests.map(({ settled }) => settled.level),
    {
      mean: design.terms.map(({ prior }) => prior.mean),
      standardDeviation: design.terms.map(({ prior }) => prior.standardDeviation),
      scale: scatterPrior.standardDeviation,
      degreesOfFreedom: scatterPrior.degreesOfFreedom,
    },
    weights,
  );
  return {
    appliance,
    containers,
    thermostat,
    tests,
    design,
    fit,
    weights,
    rows,
    room: usualRoomOf(input),
  };
};

const containersFor = (
  { id, kind }: Appliance,
  own: readonly HeldTest[],
  { kitchen, tests }: AdviceInput,
): readonly KnownContainer[] =>
  kitchen.containers
    .filter(
      (one) => standsIn(kind, one.stands) || own.some(({ setUp }) => setUp.container === one.id),
    )
    .map((container) => ({ container, known: containerIn(container, id, tests) }));

/** A slow one may be a slow container's; minutes, null where none was seen. */
const quickestWarmUp = (tests: readonly HeldTest[]): number | null => {
  const seen = tests.flatMap(({ settled }) => settled.evidence.night.warmUp?.minutesToHold ?? []);
  return seen.length === 0 ? null : Math.min(...seen);
};

/** A swing hardly larger than the display's step may be the display's own. */
const leastSwingSteps = 3;

/** Something switches by temperature. */
const cycles = (tests: readonly HeldTest[]): boolean =>
  tests.some(({ settled: { evidence } }) => {
    const swing = evidence.hold.swing?.peakToPeak ?? 0;
    return swing > leastSwingSteps * evidence.resolution;
  });

const testRow = (
  { row }: ResponseDesign,
  containers: readonly KnownContainer[],
  { setUp, settled: { place, level, room } }: HeldTest,
): Float64Array => {
  const container = place === "food" ? setUp.container : null;
  const stands = containers.find((one) => one.container.id === container);
  const bath = stands === undefined ? level : bathAround(level, room.mean, stands.known);
  return row({ setting: setUp.setting, container, room: room.mean, bath });
};

const testWeight = (terms: readonly DesignTerm[], { settled }: HeldTest): number => {
  const room = terms.find(({ term }) => term.code === "room")!.prior.mean;
  const unseen = (room * settled.room.standardDeviation) / scatterPrior.standardDeviation;
  return ((settled.weight ?? 1) * (settled.tooLittle ? shortTestWeight : 1)) / (1 + unseen ** 2);
};

/** A range that was said is where the room lies evenly; its days' means lie nearer the middle. */
const usualRoomOf = ({ kitchen: { room } }: AdviceInput): RoomFigure =>
  room === null
    ? usualRoom
    : { mean: (room.low + room.high) / 2, standardDeviation: (room.high - room.low) / 4 };

/** Tests of one set-up. */
export const testsOf = (response: Response, setUp: SetUp): readonly HeldTest[] =>
  response.tests.filter((test) => setUpKey(test.setUp) === setUpKey(setUp));
