import type { AnalysisRequest, ProbeAnalysis, RunToRun } from "./analysis-types.ts";
import { growthOfCultures, type CultureGrowth } from "./culture/culture-growth.ts";
import { combinedUncertainty, uncertaintyBudget } from "./culture/uncertainty-budget.ts";
import type { VerdictEvidence } from "./culture/verdict-evidence.ts";
import type { Verdict } from "./culture/verdict-types.ts";
import { decide } from "./culture/verdict.ts";
import type { Hold } from "./hold/hold.ts";
import type { ReadProbe } from "./probe-night.ts";
import { normalQuantile } from "./stats/normal.ts";

/** What is known besides a probe's readings. */
interface EvidenceContext {
  readonly request: Pick<AnalysisRequest, "room" | "thermostat" | "confidence">;
  readonly runToRun: RunToRun;
}

/** The same with what was asked of all probes. */
export interface ProbeContext extends EvidenceContext {
  readonly request: Pick<AnalysisRequest, "requirements" | "room" | "thermostat" | "confidence">;
}

/** Decides each requirement on the probes in the food's place; on those in the bath where a test has none. */
export const analyseProbes = (
  probes: readonly ReadProbe[],
  context: ProbeContext,
): readonly ProbeAnalysis[] => {
  const withFood = new Set(probes.filter(isFood).map(({ test }) => test));
  return probes.map((probe) => {
    const standsIn = probe.series.role === "bath" && !withFood.has(probe.test);
    return analyseProbe(probe, isFood(probe) || standsIn, context);
  });
};

const isFood = ({ series }: ReadProbe): boolean => series.role === "food";

/** What the verdict on one probe rests on. */
export const evidenceOf = (
  { night, series, thermometer }: Pick<ReadProbe, "night" | "series" | "thermometer">,
  { request, runToRun }: EvidenceContext,
): VerdictEvidence => ({
  night,
  resolution: series.resolution,
  thermometer,
  runToRun,
  room: request.room,
  thermostat: request.thermostat ?? null,
  confidence: request.confidence,
});

const analyseProbe = (probe: ReadProbe, decided: boolean, context: ProbeContext): ProbeAnalysis => {
  const evidence = evidenceOf(probe, context);
  const verdicts = decided ? context.request.requirements.map((one) => decide(one, evidence)) : [];
  return {
    ...probe,
    phases: probe.night.phases,
    ...holdUncertainty(probe.night.hold, evidence, verdicts),
    verdicts,
    growth: decided ? growthOf(probe, context) : [],
  };
};

/** By the readings as they are corrected. */
const growthOf = (
  { night: { hold, phases }, series: { minutes, celsius } }: ReadProbe,
  { request: { requirements } }: ProbeContext,
): readonly CultureGrowth[] =>
  hold === null ? [] : growthOfCultures(requirements, { minutes, celsius, phases });

const holdUncertainty = (
  hold: Hold | null,
  evidence: VerdictEvidence,
  verdicts: readonly Verdict[],
): Pick<ProbeAnalysis, "standardUncertainty" | "guardedBand" | "uncertainty"> => {
  if (hold === null) return { standardUncertainty: null, guardedBand: null, uncertainty: [] };
  const tested = uncertaintyBudget(evidence, hold);
  const standardUncertainty = combinedUncertainty(tested);
  const expanded = coverageFactor * standardUncertainty;
  const longest = verdicts.reduce<Verdict | null>(
    (a, b) => (a === null || b.requirement.hours > a.requirement.hours ? b : a),
    null,
  );
  return {
    standardUncertainty,
    guardedBand: { low: hold.band.low - expanded, high: hold.band.high + expanded },
    uncertainty: longest?.uncertainty ?? tested,
  };
};

/** For 95 % of a normal distribution (JCGM 100:2008, 6.3). */
const coverageFactor = normalQuantile(0.975);
