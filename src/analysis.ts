/**
 * The one door for shells: readings and what was said about them in, one
 * plain-data Analysis out. Terminal, JSON and HTML only render it.
 */
import type {
  AnalysedFile,
  Analysis,
  AnalysisRequest,
  HashedSource,
  RunToRun,
} from "./analysis-types.ts";
import type { Requirement } from "./culture/verdict-types.ts";
import { notice } from "./notice.ts";
import { analyseFile } from "./probe-analysis.ts";
import { done, failed, type Outcome } from "./problem.ts";
import { celsiusDifference } from "./quantity.ts";
import { meansProbe } from "./readings/columns/probe-names.ts";
import { readReadings } from "./readings/read-readings.ts";
import { highest } from "./stats/summary.ts";
import type { ReadingsFile } from "./readings/readings-file.ts";
import { assumedAccuracy, assumedThermometer } from "./thermometer/budget.ts";

export type * from "./analysis-types.ts";

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
  const stray = strayRole(request, files);
  if (stray !== null) return stray;
  const context = { request, thermometer, runToRun };
  return done({
    version: request.version,
    files,
    probes: files.flatMap((file, index) => analyseFile(file.readings, index, context)),
    notices:
      request.thermometer === null
        ? [notice("assumed-thermometer", { accuracy: assumedAccuracy })]
        : [],
    thermometer,
    room: request.room,
    runToRun,
    share: request.share,
    confidence: request.confidence,
    shownUnit: request.shownUnit,
  });
};

/** No culture is held this warm; a window up there was typed in degF without its letter. */
const warmestWindow = 65;

const wrongUnit = (requirements: readonly Requirement[], file: ReadingsFile) => {
  const warmest = highest(file.probes.map((probe) => highest(probe.celsius)));
  const wrong = requirements.find(({ low }) => low >= warmestWindow && warmest < low);
  if (wrong === undefined) return null;
  const readings = `in degC, highest ${warmest.toFixed(1)}`;
  return failed("window-wrong-unit", { low: wrong.low, high: wrong.high, readings });
};

/** A role said for a probe that no file has: a mistyped name must not pass for a role that was heeded. */
const strayRole = ({ reading }: AnalysisRequest, files: readonly AnalysedFile[]) => {
  const probes = files.flatMap((file) => file.readings.probes);
  for (const said of reading.roles?.keys() ?? []) {
    if (probes.some((probe) => meansProbe(said, probe))) continue;
    const names = probes.map(({ name }) => `"${name}"`).join(", ");
    return failed("probe-unknown", { probe: said, probes: names });
  }
  return null;
};
