/** Constructed kitchens as the advice takes them: levels, swings and drifts are known. degC. */
import type {
  AdviceInput,
  AdviceTest,
  DecidedSetUp,
  RoomFigure,
  SettledTest,
} from "../../src/advice/advice-input.ts";
import { adviseAppliance, type AdvisedAppliance } from "../../src/advice/appliance-advice.ts";
import type { KnownAppliance } from "../../src/advice/candidates.ts";
import { courseShapes } from "../../src/advice/course-shape.ts";
import { fitResponse } from "../../src/advice/response.ts";
import type { ContainerResponse } from "../../src/container/container-response.ts";
import { decideTogether } from "../../src/culture/decide-together.ts";
import { heldEvidence } from "../../src/culture/hold-plays.ts";
import { assumedRunToRun, futureRun, runScatter } from "../../src/culture/run-to-run.ts";
import type { Requirement } from "../../src/culture/verdict-types.ts";
import { tooLittle } from "../../src/culture/verdict.ts";
import type { Appliance, Container, Kitchen, Setting, SetUp } from "../../src/kitchen/kitchen.ts";
import { setUpKey } from "../../src/kitchen/set-up.ts";
import { celsiusDifference } from "../../src/quantity.ts";
import { mean } from "../../src/stats/summary.ts";
import { correctedThermometer, type ThermometerStatement } from "../../src/thermometer/budget.ts";
import { evidenceOf, type NightShape } from "../culture/nights.ts";

export const step = (celsius: number): Setting => ({ kind: "step", celsius });
export const program = (name: string): Setting => ({ kind: "program", program: name });
export const mark = (name: string): Setting => ({ kind: "mark", mark: name });
export const fixed: Setting = { kind: "fixed" };

export const jars: Container = {
  id: "jars",
  name: "Jars",
  stands: "jars in water",
  volume: 0.5,
  count: 4,
  changedOn: null,
};
export const basin: Container = {
  id: "basin",
  name: "Basin",
  stands: "basin",
  volume: 4,
  count: 1,
  changedOn: null,
};

/** Steps of 1 degC from 30 to 45, with a thermostat, unless said otherwise. */
export const cooker = (more: Partial<Appliance> = {}): Appliance => ({
  id: "cooker",
  name: "Cooker",
  kind: "cooker",
  control: { kind: "steps", low: 30, high: 45, step: 1 },
  thermostat: true,
  movedOn: null,
  ...more,
});

/** Known to 0.05 degC: next to no doubt. */
export const goodThermometer = correctedThermometer(celsiusDifference(0), celsiusDifference(0.05));

export interface ConstructedTest {
  readonly id?: string;
  readonly appliance?: string;
  readonly setting?: Setting;
  readonly container?: string;
  /** What the hold lies about. */
  readonly level: number;
  readonly hoursHeld?: number;
  readonly stepMinutes?: number;
  /** A sine. */
  readonly swing?: { readonly peakToPeak: number; readonly periodMinutes: number };
  readonly driftPerHour?: number;
  /** Hour of the hold at which the heat ends; the readings go on for six hours. */
  readonly switchedOffAfter?: number;
  readonly place?: "food" | "bath";
  readonly thermometer?: ThermometerStatement;
  readonly thermometerId?: string | null;
  /** While it ran. */
  readonly room?: RoomFigure;
  /** That a batch may meet. */
  readonly batchRoom?: { readonly low: number; readonly high: number } | null;
  readonly response?: ContainerResponse | null;
  readonly thermostat?: boolean | null;
  readonly startedAt?: number | null;
}

const nightOf = (of: ConstructedTest): NightShape => {
  const { level, hoursHeld = 14, stepMinutes = 1, driftPerHour = 0, swing, switchedOffAfter } = of;
  const ends = switchedOffAfter ?? Infinity;
  const held = (hour: number): number => {
    const cycle = swing === undefined ? 0 : (2 * Math.PI * 60 * hour) / swing.periodMinutes;
    const swung = swing === undefined ? 0 : (swing.peakToPeak / 2) * Math.sin(cycle);
    return level + swung + driftPerHour * (hour - Math.min(hoursHeld, ends) / 2);
  };
  const cooled = (hour: number): number => 20 + (held(ends) - 20) * Math.exp(-(hour - ends) / 2);
  return {
    hoursHeld: switchedOffAfter === undefined ? hoursHeld : switchedOffAfter + 6,
    hold: (hour) => (hour < ends ? held(hour) : cooled(hour)),
    stepMinutes,
  };
};

/** A water test whose one judged probe settled; as the kitchen's analysis would hand it on. */
export const settledTest = (
  of: ConstructedTest,
): AdviceTest & { readonly settled: SettledTest } => {
  const evidence = heldEvidence(
    evidenceOf(nightOf(of), {
      thermometer: of.thermometer ?? goodThermometer,
      runToRun: { value: assumedRunToRun, from: "assumed" },
      room: of.batchRoom ?? null,
      thermostat: of.thermostat ?? null,
    }),
  );
  if (evidence === null) throw new RangeError("the constructed night never settles");
  return {
    id: of.id ?? `test at ${of.level}`,
    startedAt: of.startedAt ?? null,
    setUp: {
      appliance: of.appliance ?? "cooker",
      setting: of.setting ?? step(38),
      container: of.container ?? "jars",
    },
    settled: {
      place: of.place ?? "food",
      level: evidence.hold.mean,
      evidence: {
        ...evidence,
        thermometerId: of.thermometerId === undefined ? "pen" : of.thermometerId,
      },
      room: of.room ?? { mean: 21, standardDeviation: 0.3 },
      response: of.response ?? null,
      tooLittle: tooLittle(evidence.hold),
    },
  };
};

/** A water test that could not be read, or never settled. */
export const failedTest = (id: string, setUp: Partial<SetUp> = {}): AdviceTest => ({
  id,
  startedAt: null,
  setUp: { appliance: "cooker", setting: step(38), container: "jars", ...setUp },
  settled: null,
});

export interface ConstructedInput {
  readonly appliances?: readonly Appliance[];
  readonly containers?: readonly Container[];
  readonly requirements: readonly Requirement[];
  readonly tests?: readonly AdviceTest[];
  readonly thermometers?: AdviceInput["thermometers"];
  readonly room?: Kitchen["room"];
  readonly confidence?: number;
  readonly appliance?: string | null;
  /** In place of those decided from the tests. */
  readonly setUps?: readonly DecidedSetUp[];
}

/** One cooker and jars unless said otherwise; set-ups are decided from the tests. */
export const adviceInput = (of: ConstructedInput): AdviceInput => {
  const { requirements, tests = [], confidence = 0.95, appliance = null } = of;
  return {
    kitchen: {
      shownUnit: "degC",
      altitude: null,
      room: of.room === undefined ? { low: 19, high: 23 } : of.room,
      thermometers: [],
      appliances: of.appliances ?? [cooker()],
      containers: of.containers ?? [jars],
      cultures: [],
      tests: [],
      batches: [],
    },
    appliance,
    today: "2026-06-01",
    requirements,
    confidence,
    thermometers: of.thermometers ?? [],
    tests,
    setUps: of.setUps ?? decidedSetUps(tests, requirements, confidence),
  };
};

type Settled = AdviceTest & { readonly settled: SettledTest };

const grouped = (tests: readonly Settled[]): readonly (readonly Settled[])[] => {
  const keys = [...new Set(tests.map(({ setUp }) => setUpKey(setUp)))];
  return keys.map((key) => telling(tests.filter(({ setUp }) => setUpKey(setUp) === key)));
};

/** Enough hold before too little, food before bath. */
const telling = (group: readonly Settled[]): readonly Settled[] => {
  const enough = group.filter(({ settled }) => !settled.tooLittle);
  const best = enough.length > 0 ? enough : group;
  const food = best.filter(({ settled }) => settled.place === "food");
  return food.length > 0 ? food : best;
};

/** Every tested set-up decided as the kitchen's analysis decides it: `decideTogether`, scatter by appliance. */
export const decidedSetUps = (
  tests: readonly AdviceTest[],
  requirements: readonly Requirement[],
  confidence: number,
): readonly DecidedSetUp[] => {
  const groups = grouped(tests.filter((test): test is Settled => test.settled !== null));
  return groups.map((group): DecidedSetUp => {
    const { setUp } = group[0]!;
    const own = groups.filter(([first]) => first!.setUp.appliance === setUp.appliance);
    const scatter = runScatter(own.map(levelsOf));
    const runToRun = futureRun(scatter, group.length);
    const evidence = group.map(({ settled }) => ({ ...settled.evidence, runToRun, confidence }));
    return {
      setUp,
      testIds: group.map(({ id }) => id),
      mean: mean(levelsOf(group)),
      runToRun: runToRun.value,
      scatter,
      verdicts: requirements.map((requirement) => decideTogether(requirement, evidence)),
    };
  });
};

const levelsOf = (group: readonly Settled[]): readonly number[] =>
  group.map(({ settled }) => settled.level);

/** An appliance with everything that is known of it. */
export const known = (appliance: Appliance, input: AdviceInput): KnownAppliance => {
  const response = fitResponse(appliance, input);
  return { input, response, shapeOf: courseShapes(response) };
};

/** Every appliance of the input, advised. */
export const advisedAll = (input: AdviceInput): readonly AdvisedAppliance[] =>
  input.kitchen.appliances.map((appliance) => adviseAppliance(appliance, input));
