import type {
  AdviceInput,
  AdviceTest,
  DecidedSetUp,
  RoomFigure,
  SettledTest,
} from "../advice/advice-input.ts";
import { usualRoom } from "../advice/response-prior.ts";
import type { Analysis, ProbeAnalysis } from "../analysis-types.ts";
import { heldEvidence } from "../culture/hold-plays.ts";
import { tooLittle } from "../culture/verdict.ts";
import type { KitchenFindings, TestAnalysis } from "../kitchen-analysis-types.ts";
import type { Kitchen, TemperatureRange, WaterTest } from "../kitchen/kitchen.ts";
import { evidenceOf } from "../probe-analysis.ts";
import { applianceScatter, holdMean, judgedProbes, type TestNights } from "./set-up-scatter.ts";

/** The findings as the advice takes them. */
export const adviceInput = (findings: KitchenFindings, today: string): AdviceInput => {
  const { kitchen, appliance, requirements, confidence } = findings;
  const nights = findings.tests.flatMap(({ test, analysis }): TestNights[] =>
    analysis === null ? [] : [{ test, probes: analysis.probes }],
  );
  return {
    kitchen,
    appliance,
    today,
    requirements,
    confidence,
    thermometers: findings.thermometers.map(({ thermometer: { id }, model }) => ({ id, model })),
    tests: findings.tests.map((one) => adviceTest(one, kitchen)),
    setUps: findings.setUps.map(({ setUp, testIds, mean, runToRun, verdicts }): DecidedSetUp => ({
      setUp,
      testIds,
      mean,
      runToRun: runToRun.value,
      scatter: applianceScatter(setUp.appliance, nights),
      verdicts,
    })),
  };
};

const adviceTest = (one: TestAnalysis, kitchen: Kitchen): AdviceTest => ({
  id: one.test.id,
  startedAt: one.startedAt,
  setUp: {
    appliance: one.test.appliance,
    setting: one.test.setting,
    container: one.test.container,
  },
  settled: one.analysis === null ? null : settledTest(one, one.analysis, kitchen),
});

const settledTest = (
  { test, responses }: TestAnalysis,
  analysis: Analysis,
  kitchen: Kitchen,
): SettledTest | null => {
  const level = holdMean(analysis.probes);
  const probe = level === null ? null : nearestProbe(analysis.probes, level);
  if (level === null || probe === null) return null;
  const { room, thermostat = null, confidence, runToRun } = analysis;
  const request = { room, thermostat, confidence };
  const evidence = heldEvidence(evidenceOf(probe, { request, runToRun }));
  if (evidence === null) return null;
  const beside = responses.find(({ food }) => analysis.probes[food] === probe) ?? responses[0];
  return {
    place: probe.series.role === "bath" ? "bath" : "food",
    level,
    evidence: { ...evidence, thermometerId: probe.thermometerId },
    room: roomDuring(test, analysis, kitchen, evidence.hold),
    response: beside?.response ?? null,
    tooLittle: tooLittle(evidence.hold),
  };
};

/** The judged probe whose hold mean lies nearest the test's. */
const nearestProbe = (probes: readonly ProbeAnalysis[], level: number): ProbeAnalysis | null => {
  const apart = ({ night: { hold } }: ProbeAnalysis): number =>
    hold === null ? Infinity : Math.abs(hold.mean - level);
  const settled = judgedProbes(probes).filter(({ night: { hold } }) => hold !== null);
  return settled.toSorted((a, b) => apart(a) - apart(b))[0] ?? null;
};

/** A probe in the room tells it to about this, degC: one place is not the whole kitchen. */
const onePlace = 0.3;

const roomDuring = (
  test: WaterTest,
  { probes }: Analysis,
  kitchen: Kitchen,
  hold: { readonly fromMinute: number; readonly toMinute: number },
): RoomFigure => {
  const measured = probes.find(({ series }) => series.role === "room");
  const mean = measured === undefined ? null : meanWithin(measured, hold);
  if (mean !== null) return { mean, standardDeviation: onePlace };
  const said = test.room ?? kitchen.room;
  return said === null ? usualRoom : within(said);
};

/** A test's mean room temperature lies somewhere in the range that was said: nearer its middle than its ends. */
const within = ({ low, high }: TemperatureRange): RoomFigure => ({
  mean: (low + high) / 2,
  standardDeviation: (high - low) / 4,
});

const meanWithin = (
  { series: { minutes, celsius } }: ProbeAnalysis,
  { fromMinute, toMinute }: { readonly fromMinute: number; readonly toMinute: number },
): number | null => {
  let [sum, count] = [0, 0];
  for (let i = 0; i < minutes.length; i += 1) {
    if (minutes[i]! < fromMinute || minutes[i]! > toMinute) continue;
    sum += celsius[i]!;
    count += 1;
  }
  return count === 0 ? null : sum / count;
};
