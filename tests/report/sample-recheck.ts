/**
 * Invented rechecks for the invented kitchen, one of each word, with a log of
 * batches: made by hand. They check how rechecks are shown, never whether they
 * are right.
 */
import type {
  BatchFinding,
  Recheck,
  RecheckAdvice,
  RecheckChart,
  RecheckDifference,
} from "../../src/advice/recheck-types.ts";
import type { KitchenAnalysis } from "../../src/kitchen-analysis-types.ts";
import type { SetUp } from "../../src/kitchen/kitchen.ts";
import { sampleKitchen } from "./sample-kitchen.ts";

export const difference = (
  baseline: number,
  now: number,
  standardUncertainty: number,
): RecheckDifference => ({
  baseline,
  now,
  difference: now - baseline,
  standardUncertainty,
  degreesOfFreedom: Infinity,
  low: now - baseline - 1.96 * standardUncertainty,
  high: now - baseline + 1.96 * standardUncertainty,
});

const day = (month: number, date: number): number => Date.UTC(2026, month - 1, date, 21, 37);

/** Averages smoothed by three tenths, about the first; limits as three deviations of 0.2 degC. */
export const chartOf = (tests: readonly (readonly [id: string, mean: number])[]): RecheckChart => {
  const centre = tests[0]?.[1] ?? 38;
  const deviation = 0.2;
  let smoothed = centre;
  return {
    centre,
    low: centre - 3 * deviation,
    high: centre + 3 * deviation,
    deviation,
    from: "assumed",
    points: tests.map(([testId, mean], at) => {
      smoothed += 0.3 * (mean - smoothed);
      const reach = 3 * deviation * Math.sqrt((0.3 / 1.7) * (1 - 0.7 ** (2 * (at + 1))));
      return {
        testId,
        mean,
        ewma: smoothed,
        individualSignal: Math.abs(mean - centre) > 3 * deviation,
        ewmaSignal: Math.abs(smoothed - centre) > reach,
        ewmaLow: centre - reach,
        ewmaHigh: centre + reach,
      };
    }),
  };
};

export const setUps = {
  steps: {
    appliance: "step-cooker",
    setting: { kind: "step", celsius: 38 },
    container: "jars-in-water",
  },
  cooker: { appliance: "warm-cooker", setting: { kind: "fixed" }, container: "jars-in-water" },
  box: { appliance: "box", setting: { kind: "mark", mark: "3" }, container: "jars-on-rack" },
  bath: { appliance: "bath", setting: { kind: "step", celsius: 41 }, container: "jars-in-water" },
} as const satisfies Readonly<Record<string, SetUp>>;

/** Still what it was. */
export const notMoved: Recheck = {
  setUp: setUps.steps,
  baseline: { testId: "step-cooker-38-jars", startedAt: day(3, 4) },
  newest: { testId: "step-cooker-38-jars-by-hand", startedAt: day(3, 9) },
  thermometer: "changed",
  level: difference(38.2, 38.3, 0.14),
  spread: difference(0.3, 0.31, 0.02),
  swing: null,
  drift: difference(0.004, -0.002, 0.03),
  warmUp: difference(95, 100, 21),
  word: "not moved",
  cultures: [
    {
      culture: "reuteri",
      margin: 0.9,
      word: "not moved",
      now: { verdict: "holds", probability: 0.97 },
    },
    {
      culture: "warm-blend",
      margin: -1.6,
      word: "cannot tell",
      now: { verdict: "misses", probability: 0.001 },
    },
    {
      culture: "yoghurt",
      margin: -0.3,
      word: "cannot tell",
      now: { verdict: "unproven", probability: 0.44 },
    },
  ],
  chart: chartOf([
    ["step-cooker-38-jars", 38.2],
    ["step-cooker-38-jars-by-hand", 38.3],
  ]),
};

/** Out of its window now, and slower to warm up. */
export const moved: Recheck = {
  setUp: setUps.cooker,
  baseline: { testId: "warm-cooker-1", startedAt: day(1, 2) },
  newest: { testId: "warm-cooker-jars", startedAt: day(3, 2) },
  thermometer: "shared",
  level: difference(41.2, 42.6, 0.3),
  spread: difference(0.3, 0.31, 0.02),
  swing: difference(0.8, 0.7, 0.1),
  drift: difference(0.004, -0.002, 0.03),
  warmUp: difference(95, 160, 25),
  word: "moved",
  cultures: [
    {
      culture: "reuteri",
      margin: -1.9,
      word: "moved",
      now: { verdict: "misses", probability: 0.001 },
    },
    {
      culture: "warm-blend",
      margin: 0.5,
      word: "moved",
      now: { verdict: "misses", probability: 0.02 },
    },
    {
      culture: "yoghurt",
      margin: 1.5,
      word: "moved",
      now: { verdict: "unproven", probability: 0.6 },
    },
  ],
  chart: chartOf([
    ["warm-cooker-1", 41.2],
    ["warm-cooker-2", 41.3],
    ["warm-cooker-3", 41.1],
    ["warm-cooker-4", 42.4],
    ["warm-cooker-jars", 42.6],
  ]),
};

/** Two tests by two thermometers, one of them coarse. */
export const cannotTell: Recheck = {
  setUp: setUps.box,
  baseline: { testId: "box-3-rack-old", startedAt: null },
  newest: { testId: "box-3-rack", startedAt: day(3, 15) },
  thermometer: "changed",
  level: difference(37.4, 37.9, 0.6),
  spread: null,
  swing: null,
  drift: null,
  warmUp: null,
  word: "cannot tell",
  cultures: [
    {
      culture: "reuteri",
      margin: 0.3,
      word: "cannot tell",
      now: { verdict: "unproven", probability: 0.7 },
    },
  ],
  chart: chartOf([
    ["box-3-rack-old", 37.4],
    ["box-3-rack", 37.9],
  ]),
};

/** Temperature is not it. */
export const elsewhere: BatchFinding = {
  setUp: setUps.steps,
  culture: "reuteri",
  batches: 3,
  separated: 2,
  now: { verdict: "holds", probability: 0.97 },
  causes: [
    { code: "held-too-long", equivalentHours: 49.6, wantedHours: 36 },
    { code: "thin-milk", batches: 1 },
    { code: "not-logged", missing: ["starter", "moved"] },
  ],
  association: null,
};

export const findings = {
  elsewhere,
  outside: {
    ...elsewhere,
    setUp: setUps.cooker,
    culture: "warm-blend",
    now: { verdict: "misses", probability: 0.02 },
    causes: [],
    association: {
      insideSeparated: 0,
      insideSound: 6,
      outsideSeparated: 5,
      outsideSound: 1,
      probability: 0.0152,
    },
  },
  open: {
    ...elsewhere,
    setUp: setUps.box,
    now: { verdict: "unproven", probability: 0.7 },
    causes: [{ code: "not-logged", missing: ["hours"] }],
  },
  untested: { ...elsewhere, setUp: setUps.bath, culture: "yoghurt", now: null, causes: [] },
} as const satisfies Readonly<Record<string, BatchFinding>>;

export const sampleRecheck = (more: Partial<RecheckAdvice> = {}): RecheckAdvice => ({
  rechecks: [notMoved, moved, cannotTell],
  due: [],
  findings: Object.values(findings),
  ...more,
});

/** The invented kitchen with these rechecks. */
export const recheckedKitchen = (
  more: Partial<RecheckAdvice> = {},
  whole: KitchenAnalysis = sampleKitchen(),
): KitchenAnalysis => ({ ...whole, advice: { ...whole.advice, recheck: sampleRecheck(more) } });

export const nothingToRecheck: RecheckAdvice = { rechecks: [], due: [], findings: [] };

export const sampleDue = {
  setUp: setUps.box,
  lastTested: "2026-03-15",
  reasons: [{ code: "appliance-moved", date: "2026-04-02" }],
  usual: [],
} as const satisfies RecheckAdvice["due"][number];
