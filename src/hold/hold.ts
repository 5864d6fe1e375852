import type { Minutes } from "../quantity.ts";

/** What the appliance, or the probe, was doing. */
export type PhaseKind = "idle" | "warm-up" | "hold" | "disturbance" | "cool-down";

/** What most likely lies behind a disturbance or a cool-down. */
export type PhaseCause = "lid-lifted" | "power-cut" | "probe-out" | "switched-off";

/** One stretch of a water test, minutes from the first reading. Phases are contiguous and in order. */
export interface Phase {
  readonly kind: PhaseKind;
  readonly cause?: PhaseCause;
  readonly fromMinute: number;
  readonly toMinute: number;
}

export interface WarmUp {
  /** From the start of heating to the start of the hold. */
  readonly minutesToHold: number;
  /** Of the exponential approach, with its standard uncertainty; null where the approach is not exponential. */
  readonly timeConstantMinutes: number | null;
  readonly timeConstantUncertainty: number | null;
}

/** Slow change over the hold, degC per hour, with a 95 % confidence interval. */
export interface Drift {
  readonly perHour: number;
  readonly low: number;
  readonly high: number;
  readonly standardUncertainty: number;
  /** Theil-Sen slope, degC per hour: shown where it disagrees with least squares. */
  readonly robustPerHour: number;
}

/** A thermostat's regular cycling: peak to peak in degC, from cycle extremes. */
export interface Swing {
  readonly periodMinutes: number;
  readonly peakToPeak: number;
  /** Number of whole cycles seen. */
  readonly cycles: number;
}

/**
 * The readings that belong to the hold (disturbances left out), with the time
 * each stands for. `weights` are minutes and sum to the hold's length; no
 * weight bridges a gap or a disturbance.
 */
export interface HoldReadings {
  readonly minutes: Float64Array;
  readonly celsius: Float64Array;
  readonly weights: Float64Array;
}

/** Statistics of the hold, time-weighted, degC, thermometer-corrected. */
export interface Hold {
  readonly fromMinute: number;
  readonly toMinute: number;
  /** Length of the hold without its disturbances. */
  readonly hours: number;
  readonly mean: number;
  readonly median: number;
  readonly min: number;
  readonly max: number;
  readonly standardDeviation: number;
  /** The central `share` of the hold's time. */
  readonly band: { readonly low: number; readonly high: number };
  /** Number of independent readings worth the same as these autocorrelated ones. */
  readonly effectiveReadings: number;
  readonly readings: number;
  /** Standard uncertainty of the mean from the readings' own scatter, autocorrelation heeded. */
  readonly meanUncertainty: number;
  readonly drift: Drift;
  readonly swing: Swing | null;
  /** Standard deviation of reading-to-reading noise, degC. */
  readonly noise: number;
  /** Highest and lowest of the means over whole hours. */
  readonly hourMeans: { readonly low: number; readonly high: number };
}

/** One probe's night, read. */
export interface ProbeNight {
  readonly phases: readonly Phase[];
  readonly warmUp: WarmUp | null;
  readonly hold: Hold | null;
  readonly holdReadings: HoldReadings | null;
  /** Highest reading between the start of heating and the hold's end, noise and spikes taken out, degC. */
  readonly peak: number | null;
}

export interface HoldOptions {
  /** Central share of time for the holding band, 0 to 1. */
  readonly share: number;
}

/** Fewest readings and shortest time a hold can be described from. */
export const fewestHoldReadings = 3;
export const shortestHold = 30 as Minutes;
