/**
 * A kitchen of one simulated appliance with known response, its water tests as
 * logger texts, and the truth about every set-up it offers.
 *
 * The ranges are what a practitioner would find plausible: common practice, no
 * source. They were set before the advice was looked at and take no figure from
 * its priors.
 */
import type { HashedSource } from "../../src/analysis-types.ts";
import type { Culture } from "../../src/culture/culture.ts";
import type { OpenTestFile } from "../../src/kitchen-analysis/kitchen-options.ts";
import type { Kitchen, SetUp, TemperatureRange } from "../../src/kitchen/kitchen.ts";
import { done, failed } from "../../src/problem.ts";
import { createRandom, type Random } from "./random.ts";
import { sampleRespondingAppliance, type RespondingAppliance } from "./responding-appliance.ts";
import { sampleRespondingContainers, type RespondingContainer } from "./responding-container.ts";
import { longestHours, sampleRespondingCultures } from "./responding-culture.ts";
import { sampleTestPlan, type PlannedTest } from "./responding-plan.ts";
import { sampleRoomHabit, type RoomHabit } from "./responding-room.ts";
import { runTest } from "./responding-water-test.ts";
import {
  sampleRespondingThermometer,
  type RespondingThermometer,
} from "./responding-thermometer.ts";
import {
  createFuture,
  expectedHoldMean,
  freshHoldMean,
  outlook,
  type Outlook,
} from "./responding-truth.ts";

export interface RespondingCase {
  readonly seed: number;
  readonly kitchen: Kitchen;
  readonly open: OpenTestFile;
  readonly appliance: RespondingAppliance;
  readonly containers: readonly RespondingContainer[];
  readonly cultures: readonly Culture[];
  readonly thermometer: RespondingThermometer;
  readonly planned: readonly PlannedTest[];
  readonly habit: RoomHabit;
  readonly truth: CaseTruth;
}

export interface CaseTruth {
  /** All the appliance offers. */
  readonly setUps: readonly SetUp[];
  readonly outlook: (setUp: SetUp, culture: Culture) => Outlook;
  readonly expectedHoldMean: (setUp: SetUp, hours: number) => number;
  /** Of one fresh run, degC. */
  readonly freshHoldMean: (random: Random, setUp: SetUp, hours: number) => number;
}

/** The same seed always gives the same case. */
export function sampleRespondingCase(seed: number): RespondingCase {
  const random = (label: string): Random => createRandom(seed, `responding ${label}`);
  const appliance = sampleRespondingAppliance(random("appliance"));
  const containers = sampleRespondingContainers(random("containers"), appliance.kind);
  const cultures = sampleRespondingCultures(random("cultures"), appliance.response);
  const habit = sampleRoomHabit(random("room"));
  const first = sampleRespondingThermometer(random("thermometer"), "logger");
  const second = sampleRespondingThermometer(random("second thermometer"), "second-logger");
  const offered = { response: appliance.response, containers, cultures };
  const planned = sampleTestPlan(random("plan"), offered);
  const bench = { appliance, habit, thermometers: [first, second] } as const;
  const tests = planned.map((one, index) => runTest(random(`test ${index}`), bench, one, index));
  const texts = new Map(tests.map(({ test, text }) => [test.files[0]!.path, text]));
  const kitchen: Kitchen = {
    shownUnit: "degC",
    altitude: null,
    room: random("stated").chance(0.65) ? outward(habit) : null,
    thermometers: [first.thermometer, second.thermometer],
    appliances: [asSaid(appliance)],
    containers: containers.map(({ container }) => container),
    cultures,
    tests: tests.map(({ test }) => test),
    batches: [],
  };
  const truth = caseTruth(random("future"), { appliance, containers, cultures, habit });
  const open = opener(texts);
  return {
    seed,
    kitchen,
    open,
    appliance,
    containers,
    cultures,
    thermometer: first,
    planned,
    habit,
    truth,
  };
}

const outward = ({ low, high }: RoomHabit): TemperatureRange => ({
  low: Math.floor(low),
  high: Math.ceil(high),
});

const asSaid = ({ kind, response, thermostatted, thermostatKnown }: RespondingAppliance) => ({
  id: "tried",
  name: "The appliance tried",
  kind,
  control: response.control,
  thermostat: thermostatKnown ? thermostatted : null,
  movedOn: null,
});

const opener =
  (texts: ReadonlyMap<string, string | null>): OpenTestFile =>
  ({ path }) => {
    const text = texts.get(path) ?? null;
    return Promise.resolve(
      text === null ? failed("raw-file-missing", { file: path }) : done(sourceOf(path, text)),
    );
  };

const encoder = new TextEncoder();
const sourceOf = (name: string, text: string): HashedSource => ({
  name,
  chunks: (async function* chunks() {
    yield encoder.encode(text);
  })(),
  sha256: () => "0".repeat(64),
});

type Known = Pick<RespondingCase, "appliance" | "containers" | "cultures" | "habit">;

function caseTruth(random: Random, { appliance, containers, cultures, habit }: Known): CaseTruth {
  const { settings, level } = appliance.response;
  const future = createFuture(random, appliance, habit, longestHours(cultures));
  const standing = ({ container: id }: SetUp): RespondingContainer => {
    const found = containers.find(({ container }) => container.id === id);
    if (found === undefined) throw new RangeError(`no container ${id} in this case`);
    return found;
  };
  return {
    setUps: settings.flatMap((setting) =>
      containers.map(({ container }) => ({ appliance: "tried", setting, container: container.id })),
    ),
    outlook: (setUp, culture) =>
      outlook(future, appliance, standing(setUp), level(setUp.setting), culture),
    expectedHoldMean: (setUp, hours) =>
      expectedHoldMean(future, standing(setUp), level(setUp.setting), hours),
    freshHoldMean: (draws, setUp, hours) =>
      freshHoldMean(draws, future, appliance, standing(setUp), level(setUp.setting), hours),
  };
}
