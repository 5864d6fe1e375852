/** The shapes that go into the analysis and come out of it: plain data only. */
import type { UncertaintyComponent, Verdict, Requirement } from "./culture/verdict-types.ts";
import type { Phase, ProbeNight } from "./hold/hold.ts";
import type { Notice } from "./notice.ts";
import type { CelsiusDifference, TemperatureUnit } from "./quantity.ts";
import type { ByteSource, ReadingOptions, ReadingsFile } from "./readings/readings-file.ts";
import type { Series } from "./readings/series.ts";
import type { ThermometerStatement } from "./thermometer/budget.ts";

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
