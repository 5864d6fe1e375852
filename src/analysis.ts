/**
 * The one door for shells: readings and what was said about them in, one
 * plain-data Analysis out. Terminal, JSON and HTML only render it.
 */
import { combinedUncertainty, uncertaintyBudget } from "./culture/uncertainty-budget.ts";
import type { VerdictEvidence } from "./culture/verdict-evidence.ts";
import type { Requirement, UncertaintyComponent, Verdict } from "./culture/verdict-types.ts";
import { decide } from "./culture/verdict.ts";
import type { Hold, Phase, ProbeNight } from "./hold/hold.ts";
import { readNight } from "./hold/night.ts";
import { notice, type Notice } from "./notice.ts";
import { done, failed, type Outcome } from "./problem.ts";
import { celsiusDifference, type CelsiusDifference, type TemperatureUnit } from "./quantity.ts";
import { readReadings } from "./readings/read-readings.ts";
import type { ByteSource, ReadingOptions, ReadingsFile } from "./readings/readings-file.ts";
import type { Series } from "./readings/series.ts";
import { normalQuantile } from "./stats/normal.ts";
import { assumedThermometer, type ThermometerStatement } from "./thermometer/budget.ts";

export type { ThermometerStatement } from "./thermometer/budget.ts";

/** One probe of one file with all that was found. */
export interface ProbeAnalysis {
  /** Which of the analysis's files it comes from. */
  readonly fileIndex: number;
  readonly file: string;
  /** Thermometer-corrected readings, for drawing. */
  readonly series: Series;
  readonly phases: readonly Phase[];
  readonly night: ProbeNight;
  /** Standard uncertainty of the hold's mean: thermometer, resolution, mean and run to run together, degC. */
  readonly standardUncertainty: number | null;
  /** The band widened by the expanded uncertainty, degC. */
  readonly guardedBand: { readonly low: number; readonly high: number } | null;
  /** Where the uncertainty comes from; "hours not tested" for the longest requirement. */
  readonly uncertainty: readonly UncertaintyComponent[];
  /** One per requirement, in the order asked; none for the room, nor for the bath beside a food probe. */
  readonly verdicts: readonly Verdict[];
}

export interface AnalysedFile {
  readonly readings: ReadingsFile;
  readonly sha256: string;
}

/** How much one run of a set-up differs from the next, degC. */
export interface RunToRun {
  readonly value: CelsiusDifference;
  readonly from: "stated" | "assumed";
}

export interface Analysis {
  readonly version: string;
  readonly files: readonly AnalysedFile[];
  readonly probes: readonly ProbeAnalysis[];
  readonly notices: readonly Notice[];
  readonly thermometer: ThermometerStatement;
  /** Range of room temperatures the batch may meet, degC, where it was said. */
  readonly room: { readonly low: number; readonly high: number } | null;
  readonly runToRun: RunToRun;
  readonly share: number;
  readonly confidence: number;
  /** The unit the person reads; the other stands in brackets. */
  readonly shownUnit: TemperatureUnit;
}

/** What a person asks of one or more logger files. */
export interface AnalysisRequest {
  readonly version: string;
  readonly requirements: readonly Requirement[];
  /** null: nothing was said, so `assumedThermometer` stands in. */
  readonly thermometer: ThermometerStatement | null;
  readonly room: { readonly low: number; readonly high: number } | null;
  /** null: nothing was said, so 0.3 degC is assumed. */
  readonly runToRun: number | null;
  readonly share: number;
  readonly confidence: number;
  readonly shownUnit: TemperatureUnit;
  readonly reading: ReadingOptions;
}

/** A file's bytes with their hash, which is asked for once the bytes have been read. */
export interface HashedSource extends ByteSource {
  sha256(): string;
}

/**
 * Run-to-run standard uncertainty of a hold's mean when only one test is
 * known, degC: jar filled, lid seated and room met differently next time
 * (an assumption of this project).
 */
const assumedRunToRun = 0.3;

/** Reads every file, finds each probe's night and decides each requirement. */
export const analyse = async (
  request: AnalysisRequest,
  sources: readonly HashedSource[],
): Promise<Outcome<Analysis>> => {
  const thermometer = request.thermometer ?? assumedThermometer;
  const runToRun: RunToRun =
    request.runToRun === null
      ? { value: celsiusDifference(assumedRunToRun), from: "assumed" }
      : { value: celsiusDifference(request.runToRun), from: "stated" };
  const files: AnalysedFile[] = [];
  for (const source of sources) {
    // One file after the other: two at once would only double the memory.
    // oxlint-disable-next-line no-await-in-loop
    const readings = await readReadings(source, request.reading);
    if (!readings.ok) return readings;
    const misread = wrongUnit(request.requirements, readings.value);
    if (misread !== null) return misread;
    files.push({ readings: readings.value, sha256: source.sha256() });
  }
  const context = { request, thermometer, runToRun };
  return done({
    version: request.version,
    files,
    probes: files.flatMap((file, index) => analyseFile(file.readings, index, context)),
    notices: request.thermometer === null ? [notice("assumed-thermometer", { accuracy: 1 })] : [],
    thermometer,
    room: request.room,
    runToRun,
    share: request.share,
    confidence: request.confidence,
    shownUnit: request.shownUnit,
  });
};

interface Context {
  readonly request: AnalysisRequest;
  readonly thermometer: ThermometerStatement;
  readonly runToRun: RunToRun;
}

/** No culture is held this warm; a window up there was typed in degF without its letter. */
const warmestWindow = 65;

const wrongUnit = (requirements: readonly Requirement[], file: ReadingsFile) => {
  const highest = file.probes.reduce(
    (top, probe) => Math.max(top, maximum(probe.celsius)),
    -Infinity,
  );
  const wrong = requirements.find(({ low }) => low >= warmestWindow && highest < low);
  if (wrong === undefined) return null;
  const readings = `in degC, highest ${highest.toFixed(1)}`;
  return failed("window-wrong-unit", { low: wrong.low, high: wrong.high, readings });
};

const analyseFile = (
  file: ReadingsFile,
  fileIndex: number,
  context: Context,
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
  { request, thermometer, runToRun }: Context,
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

const maximum = (values: Float64Array): number => {
  let highest = -Infinity;
  for (const value of values) if (value > highest) highest = value;
  return highest;
};
