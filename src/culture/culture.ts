import type { Celsius, Hours } from "../quantity.ts";

/** How far a figure can be trusted. */
export type FigureSource =
  /** read in the work named */
  | { readonly kind: "published"; readonly work: string }
  /** what makers do, written down nowhere that was checked */
  | { readonly kind: "common practice" }
  /** remembered from the work named, not read again */
  | { readonly kind: "from memory"; readonly work: string }
  /** the person's own, written in their kitchen */
  | { readonly kind: "own" };

/** Temperatures between which a culture's organism grows, degC; null where not found. */
export interface GrowthLimits {
  readonly organism: string;
  readonly minimum: Celsius | null;
  readonly optimum: Celsius | null;
  readonly maximum: Celsius | null;
  readonly source: FigureSource;
}

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
  /** Where the temperatures and hours come from. */
  readonly source: FigureSource;
  readonly growth: readonly GrowthLimits[];
}
