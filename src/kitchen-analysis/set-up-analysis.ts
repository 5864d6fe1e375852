import type { Analysis, ProbeAnalysis } from "../analysis-types.ts";
import { decideTogether, restsOn, type TestEvidence } from "../culture/decide-together.ts";
import { futureRun, type FutureRun, type RunScatter } from "../culture/run-to-run.ts";
import type { Requirement, Verdict } from "../culture/verdict-types.ts";
import type { SetUpAnalysis } from "../kitchen-analysis-types.ts";
import type { SetUp, WaterTest } from "../kitchen/kitchen.ts";
import { evidenceOf } from "../probe-analysis.ts";
import { mean } from "../stats/summary.ts";
import { judgedProbes, setUpLevels, tellingTests } from "./set-up-scatter.ts";

/** A water test that could be read, decided by itself. */
export interface DecidedTest {
  readonly test: WaterTest;
  readonly analysis: Analysis;
  readonly probes: readonly ProbeAnalysis[];
}

/**
 * One set-up with all its tests taken together. Where a test has several probes
 * in the food's place, a culture's verdict rests on the one least likely to
 * serve it: food is to be held wherever it stands.
 *
 * @param tests of that set-up, oldest first, at least one
 * @param scatter of the appliance's runs
 */
export const analyseSetUp = (tests: readonly DecidedTest[], scatter: RunScatter): SetUpAnalysis => {
  const telling = tellingTests(tests);
  const levels = setUpLevels(tests);
  const newest = telling.at(-1);
  const requirements = newest === undefined ? [] : requirementsOf(newest);
  const verdicts = requirements.flatMap((_, at) => verdictAt(telling, at, scatter) ?? []);
  return {
    setUp: setUpOf(telling[0]!.test),
    testIds: telling.map(({ test }) => test.id),
    mean: levels.length === 0 ? null : mean(levels),
    runToRun: futureRun(scatter, levels.length),
    probe: newest === undefined ? null : leastLikely(newest),
    verdicts,
  };
};

const setUpOf = ({ appliance, setting, container }: WaterTest): SetUp => ({
  appliance,
  setting,
  container,
});

const requirementsOf = ({ probes }: DecidedTest): readonly Requirement[] =>
  (probes.find(({ verdicts }) => verdicts.length > 0)?.verdicts ?? []).map(
    ({ requirement }) => requirement,
  );

/** The verdict on one requirement, by its place in the list; null where no probe was judged. */
const verdictAt = (
  tests: readonly DecidedTest[],
  at: number,
  scatter: RunScatter,
): Verdict | null => {
  const chosen = tests.flatMap(({ probes, analysis }) => {
    const probe = worst(probes, ({ verdicts }) => verdicts[at]?.probability ?? 1);
    const verdict = probe?.verdicts[at];
    return probe === null || verdict === undefined
      ? []
      : [{ probe, verdict, analysis, night: probe.night }];
  });
  const used = restsOn(chosen);
  const [first] = used;
  if (first === undefined) return null;
  if (used.length === 1) return first.verdict;
  const runToRun = futureRun(scatter, used.length);
  return decideTogether(
    first.verdict.requirement,
    used.map(({ probe, analysis }) => testEvidence(probe, analysis, runToRun)),
  );
};

const testEvidence = (
  probe: ProbeAnalysis,
  { room, thermostat = null, confidence }: Analysis,
  runToRun: FutureRun,
): TestEvidence => ({
  ...evidenceOf(probe, { request: { room, thermostat, confidence }, runToRun }),
  thermometerId: probe.thermometerId,
});

/** The judged probe of which a figure is the lowest; null where none was judged. */
const worst = (
  probes: readonly ProbeAnalysis[],
  figure: (probe: ProbeAnalysis) => number,
): ProbeAnalysis | null =>
  judgedProbes(probes).reduce<ProbeAnalysis | null>(
    (a, b) => (a === null || figure(b) < figure(a) ? b : a),
    null,
  );

const leastLikely = ({ probes }: DecidedTest): ProbeAnalysis | null =>
  worst(probes, ({ verdicts }) =>
    Math.min(1, ...verdicts.map(({ probability }): number => probability)),
  );
