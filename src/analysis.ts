/**
 * The one door for shells: readings and what was said about them in, one
 * plain-data Analysis out. Terminal, JSON and HTML only render it.
 */
import type { UncertaintyComponent, Verdict } from "./culture/verdict-types.ts";
import type { Phase, ProbeNight } from "./hold/hold.ts";
import type { Notice } from "./notice.ts";
import type { TemperatureUnit } from "./quantity.ts";
import type { ReadingsFile } from "./readings/readings-file.ts";
import type { Series } from "./readings/series.ts";

/** One probe of one file with all that was found. */
export interface ProbeAnalysis {
  readonly file: string;
  /** Thermometer-corrected readings, for drawing. */
  readonly series: Series;
  readonly phases: readonly Phase[];
  readonly night: ProbeNight;
  /** Standard uncertainty of the hold's mean: thermometer, resolution, mean and run to run together, degC. */
  readonly standardUncertainty: number | null;
  /** The band widened by the expanded uncertainty, degC. */
  readonly guardedBand: { readonly low: number; readonly high: number } | null;
  readonly uncertainty: readonly UncertaintyComponent[];
  /** One per requirement, in the order asked; empty for room probes. */
  readonly verdicts: readonly Verdict[];
}

export interface AnalysedFile {
  readonly readings: ReadingsFile;
  readonly sha256: string;
}

/** How the thermometer was described; everything in degC. */
export interface ThermometerStatement {
  readonly correction: number;
  readonly standardUncertainty: number;
  readonly from: "measured" | "stated" | "assumed";
  /** Half-width of a rectangular +-A specification, where that is what was stated or assumed. */
  readonly accuracy: number | null;
}

export interface Analysis {
  readonly version: string;
  readonly files: readonly AnalysedFile[];
  readonly probes: readonly ProbeAnalysis[];
  readonly notices: readonly Notice[];
  readonly thermometer: ThermometerStatement;
  /** Range of room temperatures the batch may meet, degC, where it was said. */
  readonly room: { readonly low: number; readonly high: number } | null;
  readonly runToRun: { readonly value: number; readonly from: "stated" | "assumed" };
  readonly share: number;
  readonly confidence: number;
  /** The unit the person reads; the other stands in brackets. */
  readonly shownUnit: TemperatureUnit;
}
