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
import { assumedRunToRun } from "./culture/run-to-run.ts";
import { notice, type Notice } from "./notice.ts";
import { analyseProbes } from "./probe-analysis.ts";
import { readProbes, type ReadProbe } from "./probe-night.ts";
import { done, type Outcome } from "./problem.ts";
import { celsiusDifference } from "./quantity.ts";
import { readFiles } from "./read-files.ts";
import { assumedAccuracy, assumedThermometer } from "./thermometer/budget.ts";

export type * from "./analysis-types.ts";

/** Reads every file, finds each probe's night and decides each requirement. */
export const analyse = async (
  request: AnalysisRequest,
  sources: readonly HashedSource[],
): Promise<Outcome<Analysis>> => {
  const nights = await readNights(request, sources);
  return nights.ok ? done(decideNights(request, nights.value)) : nights;
};

/** Files and nights of a request before anything is decided. */
export interface Nights {
  readonly files: readonly AnalysedFile[];
  readonly probes: readonly ReadProbe[];
}

/** The first half of `analyse`: everything that the requirements and other tests do not bear on. */
export const readNights = async (
  request: AnalysisRequest,
  sources: readonly HashedSource[],
): Promise<Outcome<Nights>> => {
  const files = await readFiles(request, sources);
  if (!files.ok) return files;
  const probes = readProbes(request, files.value, request.thermometer ?? assumedThermometer);
  return done({ files: files.value, probes });
};

/**
 * The second half: decides each requirement.
 *
 * @param runToRun what repeats of a set-up have shown; without it, as the request says, else assumed
 */
export const decideNights = (
  request: AnalysisRequest,
  { files, probes }: Nights,
  runToRun: RunToRun = runToRunOf(request),
): Analysis => ({
  version: request.version,
  files,
  probes: analyseProbes(probes, { request, runToRun }),
  notices: thermometerNotices(request, probes),
  thermometer: request.thermometer ?? assumedThermometer,
  room: request.room,
  thermostat: request.thermostat ?? null,
  runToRun,
  share: request.share,
  confidence: request.confidence,
  shownUnit: request.shownUnit,
});

const runToRunOf = ({ runToRun }: AnalysisRequest): RunToRun =>
  runToRun === null
    ? { value: assumedRunToRun, from: "assumed" }
    : { value: celsiusDifference(runToRun), from: "stated" };

const thermometerNotices = (request: AnalysisRequest, probes: readonly ReadProbe[]): Notice[] => {
  if (request.thermometer !== null) return [];
  const accuracy = assumedAccuracy;
  if (request.files === undefined) return [notice("assumed-thermometer", { accuracy })];
  const without = probes.filter(
    ({ thermometerId, series }) => thermometerId === null && series.role !== "room",
  );
  const names = without.map(({ series }) => `"${series.name}"`).join(", ");
  return names === "" ? [] : [notice("probes-without-thermometer", { probes: names, accuracy })];
};
