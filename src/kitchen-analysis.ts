/**
 * The door for a whole kitchen: its water tests in, one plain-data
 * KitchenAnalysis out. Each test is read through the other door, analysis.ts.
 */
import { adviseKitchen } from "./advice/advise.ts";
import { decideNights, type Nights } from "./analysis.ts";
import type { AnalysisRequest } from "./analysis-types.ts";
import { futureRun } from "./culture/run-to-run.ts";
import type {
  KitchenAnalysis,
  KitchenFindings,
  SetUpAnalysis,
  TestAnalysis,
} from "./kitchen-analysis-types.ts";
import { adviceInput } from "./kitchen-analysis/advice-input.ts";
import type { KitchenOptions, OpenTestFile } from "./kitchen-analysis/kitchen-options.ts";
import { probeResponses } from "./kitchen-analysis/probe-responses.ts";
import { readTest, startedAt } from "./kitchen-analysis/read-test.ts";
import { analyseSetUp, type DecidedTest } from "./kitchen-analysis/set-up-analysis.ts";
import { applianceScatter, bySetUp, type TestNights } from "./kitchen-analysis/set-up-scatter.ts";
import { requirementOf, testRequest } from "./kitchen-analysis/test-request.ts";
import { analyseThermometer, thermometerNotices } from "./kitchen-analysis/thermometers.ts";
import type { Kitchen, WaterTest } from "./kitchen/kitchen.ts";
import { done, failed, type Outcome } from "./problem.ts";

export type * from "./kitchen-analysis/kitchen-options.ts";

/**
 * Analyses a kitchen's thermometers, water tests and set-ups. A test that
 * cannot be read carries its problem and stops nothing else. Tests are read one
 * after the other and all their readings are kept.
 *
 * Fails only where `options.appliance` is not in the kitchen.
 */
export const analyseKitchen = async (
  kitchen: Kitchen,
  options: KitchenOptions,
  open: OpenTestFile,
): Promise<Outcome<KitchenAnalysis>> => {
  const { version, today, share, confidence, appliance } = options;
  if (appliance !== null && !kitchen.appliances.some(({ id }) => id === appliance)) {
    const known = kitchen.appliances.map(({ id }) => id).join(", ");
    return failed("not-in-kitchen", { what: "appliance", id: appliance, suggestion: "", known });
  }
  const thermometers = kitchen.thermometers.map((one) => analyseThermometer(one, today));
  const read: ReadTest[] = [];
  for (const test of kitchen.tests) {
    if (appliance !== null && test.appliance !== appliance) continue;
    const request = testRequest(test, kitchen, options, thermometers);
    // One test after the other: two at once would only double the memory.
    // oxlint-disable-next-line no-await-in-loop
    const nights = await readTest(test, request, open);
    read.push({ test, request, nights });
  }
  const tests = decideTests(read, kitchen);
  const findings: KitchenFindings = {
    version,
    kitchen,
    appliance,
    requirements: kitchen.cultures.map((culture) => requirementOf(culture, share)),
    share,
    confidence,
    thermometers,
    tests,
    setUps: analyseSetUps(kitchen, tests),
    notices: thermometers.flatMap(thermometerNotices),
  };
  return done({ ...findings, advice: adviseKitchen(adviceInput(findings, today)) });
};

interface ReadTest {
  readonly test: WaterTest;
  readonly request: AnalysisRequest;
  readonly nights: Outcome<Nights>;
}

/** Each test by itself, in the light of how far runs of its appliance scatter; oldest first. */
const decideTests = (read: readonly ReadTest[], kitchen: Kitchen): readonly TestAnalysis[] => {
  const nightsOfAll = read.flatMap(({ test, nights }): TestNights[] =>
    nights.ok ? [{ test, probes: nights.value.probes }] : [],
  );
  const tests = read.map(({ test, request, nights }): TestAnalysis => {
    if (!nights.ok) {
      return { test, startedAt: null, analysis: null, problem: nights.problem, responses: [] };
    }
    const runToRun = futureRun(applianceScatter(test.appliance, nightsOfAll), 1);
    const analysis = decideNights(request, nights.value, runToRun);
    const responses = probeResponses(analysis.probes, test.room ?? kitchen.room);
    return { test, startedAt: startedAt(test, nights.value), analysis, problem: null, responses };
  });
  return oldestFirst(tests);
};

/** Tests whose date is not known come last, in the kitchen's order. */
const oldestFirst = (tests: readonly TestAnalysis[]): readonly TestAnalysis[] => {
  const known = tests.filter((one) => one.startedAt !== null);
  return [
    ...known.toSorted((a, b) => a.startedAt! - b.startedAt!),
    ...tests.filter((one) => one.startedAt === null),
  ];
};

const analyseSetUps = (
  kitchen: Kitchen,
  tests: readonly TestAnalysis[],
): readonly SetUpAnalysis[] => {
  const decided = tests.flatMap(({ test, analysis }): DecidedTest[] =>
    analysis === null ? [] : [{ test, analysis, probes: analysis.probes }],
  );
  return kitchen.appliances.flatMap(({ id }) => {
    const own = decided.filter(({ test }) => test.appliance === id);
    const scatter = applianceScatter(id, own);
    return bySetUp(own).map((group) => analyseSetUp(group, scatter));
  });
};
