/**
 * An invented kitchen for the report's tests: four appliances that were tested
 * and one that was not, seven tests of which one could not be read, three
 * cultures, three thermometers. Constructed by hand and by plain formulas: it
 * checks how things are shown, never whether they are right.
 */
import type { ProbeAnalysis, RunToRun } from "../../src/analysis-types.ts";
import type { Culture } from "../../src/culture/culture.ts";
import type {
  Requirement,
  UncertaintyComponent,
  Verdict,
} from "../../src/culture/verdict-types.ts";
import type {
  KitchenAnalysis,
  SetUpAnalysis,
  TestAnalysis,
  ThermometerAnalysis,
} from "../../src/kitchen-analysis-types.ts";
import type { Kitchen, KitchenThermometer, Setting, WaterTest } from "../../src/kitchen/kitchen.ts";
import { notice } from "../../src/notice.ts";
import type { Problem } from "../../src/problem.ts";
import { celsius, celsiusDifference, hours } from "../../src/quantity.ts";
import type {
  Correction,
  CorrectionComponent,
  CorrectionDoubt,
} from "../../src/thermometer/correction-model.ts";
import type { ThermometerStatement } from "../../src/thermometer/budget.ts";
import { adviceFor } from "./sample-advice.ts";
import { analysisOf, hostileNames, probe, requirement, verdict } from "./sample-analysis.ts";
import type { NightShape } from "./sample-analysis.ts";

const practice = { kind: "common practice" } as const;
const culture = (id: string, name: string, low: number, high: number, needed: number): Culture => ({
  id,
  name,
  low: celsius(low),
  high: celsius(high),
  target: celsius((low + high) / 2),
  ceiling: celsius(43),
  hours: hours(needed),
  sources: { window: practice, target: practice, ceiling: practice, hours: practice },
  growth: [],
});

const asked = (
  id: string,
  name: string,
  low: number,
  high: number,
  needed: number,
): Requirement => ({ ...requirement(id, low, high, 43, needed), name });

const low = asked(
  "reuteri",
  "Low long-hold milk culture (Limosilactobacillus reuteri)",
  36.5,
  39.5,
  36,
);
const warm = asked("warm-blend", "Warm long-hold blend", 39.5, 42, 36);
const yoghurt = asked("yoghurt", "Yoghurt, warm set (Streptococcus thermophilus)", 38, 43, 12);
export const kitchenRequirements: readonly Requirement[] = [low, warm, yoghurt];

const correctionAt = (reading: number, correction: number, u: number): Correction => ({
  reading,
  correction,
  standardUncertainty: u,
  degreesOfFreedom: 40,
  expanded: 2.02 * u,
});

const readings = [20, 38, 43, 90] as const;

const doubt = (
  source: CorrectionComponent["source"],
  atCentre: number,
  from: CorrectionComponent["from"],
): CorrectionComponent => ({
  source,
  degreesOfFreedom: 50,
  from,
  shape: "line",
  atCentre,
  perDegree: 0,
  correlation: 0,
});

const doubtsOf = (
  ...parts: readonly (readonly [CorrectionDoubt["source"], number, CorrectionDoubt["from"]])[]
): ThermometerAnalysis["doubts"] => ({
  reading: 38,
  parts: parts.map(([source, standardUncertainty, from]) => ({
    source,
    standardUncertainty,
    from,
  })),
});

const thermometer = (id: string, name: string, more: Partial<KitchenThermometer> = {}) => ({
  id,
  name,
  resolution: 0.1,
  accuracy: 0.5,
  checks: [],
  ...more,
});

const boiledAt = { altitude: 1450, pressure: null } as const;

const pen: ThermometerAnalysis = {
  thermometer: thermometer("pen", "Pen thermometer", {
    checks: [
      { kind: "ice", readings: [0.3, 0.2, 0.3], date: "2026-02-14", confirmed: false },
      {
        kind: "boiling",
        readings: [91.2, 91.1],
        date: "2026-02-14",
        confirmed: false,
        place: boiledAt,
      },
    ],
  }),
  model: {
    centre: 0.27,
    correction: -0.27,
    slope: 0,
    components: [doubt("ice bath", 0.05, "assumed"), doubt("unchecked scale", 0.15, "assumed")],
    from: "measured",
    accuracy: null,
  },
  corrections: readings.map((reading) => correctionAt(reading, -0.27, 0.05 + reading * 0.004)),
  doubts: doubtsOf(["unchecked scale", 0.15, "assumed"], ["ice bath", 0.05, "assumed"]),
  questions: [
    {
      check: 1,
      leftOut: true,
      code: "boiling-too-cold",
      reading: 91.15,
      expected: 95.2,
      altitude: 2660,
    },
  ],
  checked: { date: "2026-02-14", daysAgo: 34, monthsAgo: 1 },
};

const jarLogger: ThermometerAnalysis = {
  thermometer: thermometer("jar-logger", "Logger with jar probes", {
    checks: [
      { kind: "ice", readings: [-0.1, -0.1, -0.1], date: "2026-02-15", confirmed: false },
      {
        kind: "boiling",
        readings: [95.1, 95.0, 95.1],
        date: "2026-02-15",
        confirmed: false,
        place: boiledAt,
      },
    ],
  }),
  model: {
    centre: 47,
    correction: 0.11,
    slope: 0.0004,
    components: [doubt("boiling point", 0.09, "assumed"), doubt("linearity", 0.04, "assumed")],
    from: "measured",
    accuracy: null,
  },
  corrections: readings.map((reading) => correctionAt(reading, 0.1 + reading * 0.0004, 0.07)),
  doubts: doubtsOf(["boiling point", 0.09, "assumed"], ["linearity", 0.04, "assumed"]),
  questions: [],
  checked: { date: "2026-02-15", daysAgo: 33, monthsAgo: 1 },
};

const bathLogger: ThermometerAnalysis = {
  thermometer: thermometer("bath-logger", "Second logger, for the bath", { resolution: 0.01 }),
  model: {
    centre: 0,
    correction: 0,
    slope: 0,
    components: [doubt("specification", 0.289, "stated")],
    from: "stated",
    accuracy: celsiusDifference(0.5),
  },
  corrections: readings.map((reading) => correctionAt(reading, 0, 0.289)),
  doubts: doubtsOf(["specification", 0.289, "stated"]),
  questions: [],
  checked: null,
};

const statements: Readonly<Record<string, ThermometerStatement>> = {
  pen: statement(-0.27, 0.21, "measured"),
  "jar-logger": statement(0.12, 0.07, "measured"),
  "bath-logger": { ...statement(0, 0.289, "stated"), accuracy: celsiusDifference(0.5) },
};

function statement(
  correction: number,
  standardUncertainty: number,
  from: ThermometerStatement["from"],
): ThermometerStatement {
  return {
    correction: celsiusDifference(correction),
    standardUncertainty: celsiusDifference(standardUncertainty),
    from,
    accuracy: null,
  };
}

interface TestParts {
  readonly id: string;
  readonly appliance: string;
  readonly setting: Setting;
  readonly container: string;
  readonly day: number;
  readonly files: readonly string[];
  readonly fill?: string;
  readonly notes?: string;
}

const waterTest = (parts: TestParts): WaterTest => ({
  id: parts.id,
  appliance: parts.appliance,
  setting: parts.setting,
  container: parts.container,
  fill: parts.fill ?? null,
  room: { low: 18, high: 24 },
  notes: parts.notes ?? null,
  files: parts.files.map((name, at) => ({
    path: `readings/${name}`,
    sha256: String(at + 1).repeat(64),
    startsAt: null,
    unit: null,
    dateOrder: null,
    decimal: null,
    intervalSeconds: null,
    columns: [],
    probes: [],
  })),
});

const fixed: Setting = { kind: "fixed" };
const step = (degrees: number): Setting => ({ kind: "step", celsius: degrees });

const tests = {
  warmCooker: waterTest({
    id: "warm-cooker-jars",
    appliance: "warm-cooker",
    setting: fixed,
    container: "jars-in-water",
    day: 2,
    files: ["cooker-warm-program.csv"],
    fill: "water to the jars’ shoulders",
  }),
  steps: waterTest({
    id: "step-cooker-38-jars",
    appliance: "step-cooker",
    setting: step(38),
    container: "jars-in-water",
    day: 4,
    files: ["adjustable-cooker.csv"],
  }),
  byHand: waterTest({
    id: "step-cooker-38-jars-by-hand",
    appliance: "step-cooker",
    setting: step(38),
    container: "jars-in-water",
    day: 9,
    files: ["adjustable-cooker-by-hand.csv"],
    notes: "eight readings with the pen thermometer, lid opened as little as could be",
  }),
  basin: waterTest({
    id: "step-cooker-41-basin",
    appliance: "step-cooker",
    setting: step(41),
    container: "basin",
    day: 11,
    files: ["adjustable-cooker-basin.csv"],
    fill: "2 L",
  }),
  bath: waterTest({
    id: "bath-41-jars",
    appliance: "bath",
    setting: step(41),
    container: "jars-in-water",
    day: 12,
    files: ["bath-jar.csv", "bath-water.tsv"],
  }),
  bathHigher: waterTest({
    id: "bath-42-jars",
    appliance: "bath",
    setting: step(42),
    container: "jars-in-water",
    day: 14,
    files: ["bath-42.csv"],
  }),
  box: waterTest({
    id: "box-3-rack",
    appliance: "box",
    setting: { kind: "mark", mark: "3" },
    container: "jars-on-rack",
    day: 15,
    files: ["warming-box.txt"],
    fill: "eight jars",
  }),
} as const;

const started = (day: number): number => Date.UTC(2026, 2, day, 21, 37);

const steady: NightShape = {
  level: 40.8,
  swing: 0.9,
  periodMinutes: 24,
  perHour: 0.004,
  stepSeconds: 60,
  hours: 11,
};

const measuredBy = (id: string, one: ProbeAnalysis): ProbeAnalysis => ({
  ...one,
  test: 0,
  thermometerId: id,
  thermometer: statements[id]!,
});

const budget = (thermometerDoubt: number, run: RunToRun): readonly UncertaintyComponent[] => [
  {
    source: "thermometer",
    standardUncertainty: celsiusDifference(thermometerDoubt),
    from: "measured",
  },
  { source: "resolution", standardUncertainty: celsiusDifference(0.029), from: "measured" },
  { source: "mean of the hold", standardUncertainty: celsiusDifference(0.04), from: "measured" },
  { source: "run to run", standardUncertainty: run.value, from: run.from },
  { source: "hours not tested", standardUncertainty: celsiusDifference(0.22), from: "stated" },
];

const assumedRun: RunToRun = { value: celsiusDifference(0.3), from: "assumed" };
const measuredRun: RunToRun = { value: celsiusDifference(0.18), from: "measured", repeats: 2 };

const dominant = (standardUncertainty: number, share: number) =>
  ({
    code: "dominant-doubt",
    source: "run to run",
    standardUncertainty,
    share,
    from: "assumed",
  }) as const;

const tooWarm = (whose: Requirement, mean: number, by: number): Verdict =>
  verdict(
    "misses",
    0.002,
    whose,
    [
      { code: "mean-outside", mean, side: "above", by },
      { code: "above-window", high: whose.high, share: 0.98 },
    ],
    { below: 0, above: 560 },
  );

const tooCold = (whose: Requirement, mean: number, by: number): Verdict =>
  verdict(
    "misses",
    0.004,
    whose,
    [
      { code: "mean-outside", mean, side: "below", by },
      { code: "never-reached", low: whose.low, peak: mean + 0.4 },
    ],
    { below: 590, above: 0 },
  );

const holds = (whose: Requirement, probability: number): Verdict =>
  verdict("holds", probability, whose, [
    { code: "all-inside", marginLow: 1.2, marginHigh: 1.1 },
    dominant(0.3, 0.52),
  ]);

const open = (whose: Requirement, probability: number): Verdict =>
  verdict(
    "unproven",
    probability,
    whose,
    [
      { code: "near-edge", edge: whose.high, side: "above", margin: 0.2, uncertainty: 0.7 },
      dominant(0.3, 0.61),
      { code: "tested-too-short", tested: 9.6, needed: whose.hours },
      { code: "would-settle", source: "run to run", verdict: "holds", probability: 0.97 },
    ],
    { below: 0, above: 12 },
  );

const verdicts = {
  warmCooker: [tooWarm(low, 41.3, 1.8), open(warm, 0.81), holds(yoghurt, 0.987)],
  steps: [holds(low, 0.962), tooCold(warm, 38.2, 1.3), open(yoghurt, 0.44)],
  basin: [tooWarm(low, 40.9, 1.4), holds(warm, 0.953), holds(yoghurt, 0.99)],
  bath: [tooWarm(low, 40.7, 1.2), holds(warm, 0.971), holds(yoghurt, 0.995)],
  box: [open(low, 0.31), tooCold(warm, 37.4, 2.1), tooCold(yoghurt, 37.4, 0.6)],
} as const;

const read = (
  test: WaterTest,
  day: number,
  probes: readonly ProbeAnalysis[],
  responses: TestAnalysis["responses"] = [],
): TestAnalysis => {
  const base = analysisOf(probes, { room: test.room, shownUnit: "degC" });
  const startWallClock = started(day);
  const files = base.files.map(({ readings: file, sha256 }) => ({
    sha256,
    readings: { ...file, startWallClock },
  }));
  return {
    test,
    startedAt: startWallClock,
    analysis: {
      ...base,
      probes,
      files,
    },
    problem: null,
    responses,
  };
};

const withBudget = (all: readonly Verdict[], run: RunToRun): readonly Verdict[] =>
  all.map((one) => ({ ...one, uncertainty: budget(0.07, run) }));

const jar = (
  level: number,
  file: string,
  judged: readonly Verdict[],
  more: Partial<NightShape> = {},
) => probe({ shape: { ...steady, level, ...more }, name: "Jar", file, verdicts: judged });

const unreadable: Problem = {
  code: "no-temperature-column",
  facts: { file: "bath-42.csv", line: 1, columns: "Date, Time, Humidity" },
};

const response: TestAnalysis["responses"] = [
  {
    food: 0,
    bath: 1,
    response: {
      offset: { value: 0.44, standardUncertainty: 0.3 },
      shareLost: { value: 0.021, standardUncertainty: 0.014 },
      lagMinutes: { value: 23.4, standardUncertainty: 1.2 },
      room: { mean: 20.6, from: "stated" },
    },
  },
];

const warmResponse: TestAnalysis["responses"] = [
  {
    food: 0,
    bath: 1,
    response: {
      offset: { value: 0.71, standardUncertainty: 0.04 },
      shareLost: null,
      lagMinutes: null,
      room: null,
    },
  },
];

const testAnalyses: readonly TestAnalysis[] = [
  read(
    tests.warmCooker,
    2,
    [
      measuredBy("jar-logger", jar(41.3, "cooker-warm-program.csv", verdicts.warmCooker)),
      measuredBy(
        "jar-logger",
        probe({
          shape: { ...steady, level: 42, swing: 1.6 },
          name: "Water bath",
          role: "bath",
          file: "cooker-warm-program.csv",
        }),
      ),
    ],
    warmResponse,
  ),
  read(tests.steps, 4, [
    measuredBy(
      "jar-logger",
      jar(38.2, "adjustable-cooker.csv", verdicts.steps, { lidAtMinute: 300 }),
    ),
  ]),
  read(tests.byHand, 9, [
    measuredBy(
      "pen",
      jar(38.4, "adjustable-cooker-by-hand.csv", verdicts.steps, {
        stepSeconds: 3600,
        swing: 0,
        hours: 9,
      }),
    ),
  ]),
  read(tests.basin, 11, [
    measuredBy("jar-logger", jar(40.9, "adjustable-cooker-basin.csv", verdicts.basin)),
  ]),
  read(
    tests.bath,
    12,
    [
      measuredBy(
        "jar-logger",
        jar(40.7, "bath-jar.csv", verdicts.bath, { swing: 0, stepSeconds: 120 }),
      ),
      measuredBy(
        "bath-logger",
        probe({
          shape: { ...steady, level: 41.1, swing: 0.2 },
          name: "Bath",
          role: "bath",
          file: "bath-water.tsv",
          fileIndex: 1,
        }),
      ),
    ],
    response,
  ),
  {
    test: tests.bathHigher,
    startedAt: null,
    analysis: null,
    problem: unreadable,
    responses: [],
  },
  read(tests.box, 15, [
    measuredBy(
      "jar-logger",
      jar(37.4, "warming-box.txt", verdicts.box, {
        swing: 0,
        perHour: 0.12,
        probeOutAtMinute: 640,
      }),
    ),
  ]),
];

const setUp = (
  test: WaterTest,
  testIds: readonly string[],
  judged: readonly Verdict[],
  runToRun: RunToRun,
): SetUpAnalysis => {
  const newest = testAnalyses.find((one) => one.test.id === testIds.at(-1));
  return {
    setUp: { appliance: test.appliance, setting: test.setting, container: test.container },
    testIds,
    mean: 40,
    runToRun,
    probe: newest?.analysis?.probes[0] ?? null,
    verdicts: withBudget(judged, runToRun),
  };
};

const setUps: readonly SetUpAnalysis[] = [
  setUp(tests.warmCooker, [tests.warmCooker.id], verdicts.warmCooker, assumedRun),
  setUp(tests.steps, [tests.steps.id, tests.byHand.id], verdicts.steps, measuredRun),
  setUp(tests.basin, [tests.basin.id], verdicts.basin, assumedRun),
  setUp(tests.bath, [tests.bath.id], verdicts.bath, assumedRun),
  setUp(tests.box, [tests.box.id], verdicts.box, assumedRun),
];

const kitchen: Kitchen = {
  shownUnit: "degC",
  altitude: 1450,
  room: { low: 17, high: 24 },
  thermometers: [pen.thermometer, jarLogger.thermometer, bathLogger.thermometer],
  appliances: [
    {
      id: "warm-cooker",
      name: "Cooker with one warm program",
      kind: "cooker",
      control: { kind: "fixed" },
      thermostat: true,
      movedOn: null,
    },
    {
      id: "step-cooker",
      name: "Adjustable cooker",
      kind: "cooker",
      control: { kind: "steps", low: 30, high: 60, step: 1 },
      thermostat: true,
      movedOn: null,
    },
    {
      id: "bath",
      name: "Circulating bath",
      kind: "circulating bath",
      control: { kind: "steps", low: 20, high: 60, step: 0.1 },
      thermostat: true,
      movedOn: null,
    },
    {
      id: "box",
      name: "Warming box",
      kind: "warming box",
      control: { kind: "marks", marks: ["1", "2", "3", "4", "5"] },
      thermostat: null,
      movedOn: null,
    },
    {
      id: "cupboard",
      name: "Cupboard over the stove",
      kind: "other",
      control: { kind: "fixed" },
      thermostat: false,
      movedOn: null,
    },
  ],
  containers: [
    {
      id: "jars-in-water",
      name: "Jars in water",
      stands: "jars in water",
      volume: 0.5,
      count: 6,
      changedOn: null,
    },
    {
      id: "jars-on-rack",
      name: "Jars on the rack",
      stands: "jars in air",
      volume: 0.25,
      count: 8,
      changedOn: null,
    },
    {
      id: "basin",
      name: "Straight in the basin",
      stands: "basin",
      volume: 2,
      count: null,
      changedOn: null,
    },
  ],
  cultures: [
    culture("reuteri", low.name, 36.5, 39.5, 36),
    culture("warm-blend", warm.name, 39.5, 42, 36),
    culture("yoghurt", yoghurt.name, 38, 43, 12),
  ],
  tests: testAnalyses.map(({ test }) => test),
  batches: [],
};

/** With advice for whatever the kitchen is then. */
const advised = (analysis: Omit<KitchenAnalysis, "advice">): KitchenAnalysis => ({
  ...analysis,
  advice: adviceFor(analysis),
});

/** The whole kitchen. */
export const sampleKitchen = (more: Partial<KitchenAnalysis> = {}): KitchenAnalysis => ({
  ...advised({
    version: "0.1.0",
    kitchen,
    appliance: null,
    requirements: kitchenRequirements,
    share: 0.95,
    confidence: 0.95,
    thermometers: [pen, jarLogger, bathLogger],
    tests: testAnalyses,
    setUps,
    notices: [notice("check-old", { thermometer: "Pen thermometer", months: 14 })],
    ...more,
  }),
  ...more,
});

/** The same asked for one appliance only. */
export const oneAppliance = (appliance: string): KitchenAnalysis => {
  const whole = sampleKitchen();
  return sampleKitchen({
    appliance,
    tests: whole.tests.filter(({ test }) => test.appliance === appliance),
    setUps: whole.setUps.filter((one) => one.setUp.appliance === appliance),
  });
};

/** A kitchen just begun: appliances, and nothing tested. */
export const untestedKitchen = (): KitchenAnalysis =>
  sampleKitchen({
    kitchen: { ...kitchen, tests: [] },
    tests: [],
    setUps: [],
    thermometers: [],
    notices: [],
  });

export const sampleThermometers = { pen, jarLogger, bathLogger } as const;

const renamed = <One extends { readonly name: string }>(one: One, name: string): One => ({
  ...one,
  name,
});

const hostileSetUp = (one: SetUpAnalysis, program: string, name: string): SetUpAnalysis => ({
  ...one,
  setUp: { ...one.setUp, setting: { kind: "program", program } },
  verdicts: one.verdicts.map((each) => ({
    ...each,
    requirement: { ...each.requirement, name },
  })),
});

/** Every name a person or a file can give is hostile. */
export const hostileKitchen = (): KitchenAnalysis => {
  const [first, second, third, fourth] = hostileNames;
  const whole = sampleKitchen();
  return advised({
    ...whole,
    requirements: whole.requirements.map((one) => renamed(one, second)),
    kitchen: {
      ...whole.kitchen,
      appliances: whole.kitchen.appliances.map((one) => ({
        ...renamed(one, first),
        control: { kind: "programs", programs: [first, fourth] },
      })),
      containers: whole.kitchen.containers.map((one) => renamed(one, second)),
      thermometers: whole.kitchen.thermometers.map((one) => renamed(one, fourth)),
    },
    thermometers: whole.thermometers.map((one) => ({
      ...one,
      thermometer: renamed(one.thermometer, fourth),
    })),
    tests: whole.tests.map((one) => ({
      ...one,
      test: { ...one.test, id: `${third}-${one.test.id}`, notes: second, fill: fourth },
    })),
    setUps: whole.setUps.map((one) => hostileSetUp(one, first, second)),
  });
};

/** More cultures than fit beside each other: the table becomes a list on every screen. */
export const manyCultures = (): KitchenAnalysis => {
  const whole = sampleKitchen();
  const more = [24, 27, 30].map((from) =>
    asked(`own-${from}`, `Own culture ${from}`, from, from + 2, 18),
  );
  const withMore = (one: SetUpAnalysis): SetUpAnalysis => ({
    ...one,
    verdicts: one.verdicts.concat(more.map((each) => tooWarm(each, 40, 10))),
  });
  return sampleKitchen({
    requirements: kitchenRequirements.concat(more),
    setUps: whole.setUps.map(withMore),
  });
};
