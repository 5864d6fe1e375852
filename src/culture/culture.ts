import type { Celsius, Hours } from "../quantity.ts";

/** How far a figure can be trusted. */
export type FigureSource =
  /** read in the work named, which prints `printed`: the figure, or the range it is an end or the middle of */
  | { readonly kind: "published"; readonly work: string; readonly printed: string }
  /** what makers do, written down nowhere that was checked */
  | { readonly kind: "common practice" }
  /** remembered from the work named, not read again */
  | { readonly kind: "from memory"; readonly work: string }
  /** the person's own, written in their kitchen */
  | { readonly kind: "own" };

/** A temperature with where it comes from. */
export interface SourcedTemperature {
  readonly celsius: Celsius;
  readonly source: FigureSource;
}

/** Temperatures between which a culture's organism grows; null where not found. */
export interface GrowthLimits {
  readonly organism: string;
  readonly minimum: SourcedTemperature | null;
  readonly optimum: SourcedTemperature | null;
  readonly maximum: SourcedTemperature | null;
}

/** Where each figure of a culture comes from; `window` is for both of its ends. */
export interface CultureSources {
  readonly window: FigureSource;
  readonly target: FigureSource;
  readonly ceiling: FigureSource;
  readonly hours: FigureSource;
}

/** No culture is held this warm, degC; a window up there was typed in degF without its letter. */
export const warmestWindow = 65;

/** A culture and what it asks: a starter with its window, target, ceiling and hold hours. */
export interface Culture {
  /** What one types after --culture. */
  readonly id: string;
  readonly name: string;
  readonly low: Celsius;
  readonly high: Celsius;
  readonly target: Celsius;
  /** Never above. */
  readonly ceiling: Celsius;
  readonly hours: Hours;
  readonly sources: CultureSources;
  readonly growth: readonly GrowthLimits[];
}
