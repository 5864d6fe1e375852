/** The shapes that go into the analysis and come out of it: plain data only. */
import type { CultureGrowth } from "./culture/culture-growth.ts";
import type { UncertaintyComponent, Verdict, Requirement } from "./culture/verdict-types.ts";
import type { Phase, ProbeNight } from "./hold/hold.ts";
import type { Notice } from "./notice.ts";
import type { Problem } from "./problem.ts";
import type { CelsiusDifference, TemperatureUnit } from "./quantity.ts";
import type { ByteSource, ReadingOptions, ReadingsFile } from "./readings/readings-file.ts";
import type { Series } from "./readings/series.ts";
import type { ThermometerStatement } from "./thermometer/budget.ts";
import type { CorrectionModel } from "./thermometer/correction-model.ts";

export type { ThermometerStatement } from "./thermometer/budget.ts";

/** One probe of one file with all that was found. */
export interface ProbeAnalysis {
  /** Which of the analysis's files it comes from. */
  readonly fileIndex: number;
  readonly file: string;
  /** Which water test within the analysis; loggers that ran together share one, else each file is its own. */
  readonly test: number;
  /** Thermometer-corrected readings, for drawing. */
  readonly series: Series;
  /** What is known of this probe's thermometer at its hold, or at its median reading where it has none. */
  readonly thermometer: ThermometerStatement;
  /** Id of the thermometer in the kitchen; null where it is the one said, or assumed, for all. */
  readonly thermometerId: string | null;
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
  /** What a model makes of the night for the cultures that have organisms; only where it has verdicts and a hold. */
  readonly growth?: readonly CultureGrowth[];
}

export interface AnalysedFile {
  readonly readings: ReadingsFile;
  readonly sha256: string;
}

/** How much one run of a set-up differs from the next, degC. */
export interface RunToRun {
  readonly value: CelsiusDifference;
  readonly from: "measured" | "stated" | "assumed";
  /** How many tests repeated a set-up, where it was measured. */
  readonly repeats?: number;
}

export interface Analysis {
  readonly version: string;
  readonly files: readonly AnalysedFile[];
  readonly probes: readonly ProbeAnalysis[];
  readonly notices: readonly Notice[];
  /** Said or assumed for all probes that have none of their own. */
  readonly thermometer: ThermometerStatement;
  /** Range of room temperatures the batch may meet, degC, where it was said. */
  readonly room: { readonly low: number; readonly high: number } | null;
  /** Whether the appliance has a thermostat; null, or left out, where nobody knows. */
  readonly thermostat?: boolean | null;
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
  /** A checked thermometer behind every probe that has none of its own; `thermometer` is then what it says near the window. */
  readonly checkedThermometer?: ProbeThermometer;
  readonly room: { readonly low: number; readonly high: number } | null;
  /** Whether the appliance has a thermostat; null, or left out, where nobody knows. */
  readonly thermostat?: boolean | null;
  /** null: nothing was said, so 0.3 degC is assumed. */
  readonly runToRun: number | null;
  readonly share: number;
  readonly confidence: number;
  readonly shownUnit: TemperatureUnit;
  readonly reading: ReadingOptions;
  /** One per source, in their order, in place of `reading`; without it all are read alike. */
  readonly files?: readonly FileRequest[];
  /** The files are of loggers that ran together: one water test, aligned by their clocks. */
  readonly together?: boolean;
}

/** What is said of one logger's file. */
export interface FileRequest {
  readonly reading: ReadingOptions;
  /** By the probe's name or heading; probes not in it have the thermometer of the whole request. */
  readonly thermometers: ReadonlyMap<string, ProbeThermometer>;
  /** Wall clock of its first reading as if in UTC, ms since 1970; counts more than the file's own. */
  readonly startsAt: number | null;
}

/** A known thermometer behind a probe. */
export interface ProbeThermometer {
  readonly id: string;
  readonly model: CorrectionModel;
}

/** A file's bytes with their hash, which is asked for once the bytes have been read. */
export interface HashedSource extends ByteSource {
  sha256(): string;
  /** Why reading broke off, where it threw for a reason that is known. */
  broken?(): Problem | null;
}
