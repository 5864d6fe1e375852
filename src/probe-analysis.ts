import type { AnalysisRequest, ProbeAnalysis, RunToRun } from "./analysis-types.ts";
import { combinedUncertainty, uncertaintyBudget } from "./culture/uncertainty-budget.ts";
import type { VerdictEvidence } from "./culture/verdict-evidence.ts";
import type { Verdict } from "./culture/verdict-types.ts";
import { decide } from "./culture/verdict.ts";
import type { Hold } from "./hold/hold.ts";
import { readNight } from "./hold/night.ts";
import type { ReadingsFile } from "./readings/readings-file.ts";
import type { Series } from "./readings/series.ts";
import { normalQuantile } from "./stats/normal.ts";
import type { ThermometerStatement } from "./thermometer/budget.ts";

/** What was said, or assumed, for all probes. */
export interface ProbeContext {
  readonly request: AnalysisRequest;
  readonly thermometer: ThermometerStatement;
  readonly runToRun: RunToRun;
}

/** Finds the night of every probe of a file and decides each requirement on those in the food's place. */
export const analyseFile = (
  file: ReadingsFile,
  fileIndex: number,
  context: ProbeContext,
): readonly ProbeAnalysis[] => {
  const hasFood = file.probes.some((probe) => probe.role === "food");
  return file.probes.map((probe) => {
    const decided = probe.role === "food" || (probe.role === "bath" && !hasFood);
    return analyseProbe(probe, decided, { fileIndex, file: file.name }, context);
  });
};

const analyseProbe = (
  probe: Series,
  decided: boolean,
  origin: { readonly fileIndex: number; readonly file: string },
  { request, thermometer, runToRun }: ProbeContext,
): ProbeAnalysis => {
  const series = corrected(probe, thermometer.correction);
  const night = readNight(series, { share: request.share });
  const evidence: VerdictEvidence = {
    night,
    resolution: probe.resolution,
    thermometer,
    runToRun,
    room: request.room,
    confidence: request.confidence,
  };
  const verdicts = decided ? request.requirements.map((one) => decide(one, evidence)) : [];
  return {
    ...origin,
    series,
    phases: night.phases,
    night,
    ...holdUncertainty(night.hold, evidence, verdicts),
    verdicts,
  };
};

const corrected = (probe: Series, correction: number): Series =>
  correction === 0
    ? probe
    : { ...probe, celsius: probe.celsius.map((value) => value + correction) };

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
