import { coolingPoints } from "./cooling-stretch.ts";
import type { CoolDownUnknown } from "./heating-types.ts";
import type { HeatingReadings } from "./lethal-rate.ts";
import { fitCooling, type CoolingFit, type CoolingPoints } from "./newton-cooling.ts";

/** Where it cools, degC: the room or the water bath it stands in; null: nobody said. */
export type Surroundings = { readonly low: number; readonly high: number } | null;

/** What is assumed of them where nobody said: a room, or tap water (our assumption). */
const assumed = { middle: 20, spread: 6 };
/** Least spread of surroundings somebody said: a pot warms what it stands in. */
const leastSpread = 1.5;
/** n of the cooling law with its weight beforehand (our assumption). */
const laws = [
  [0, 0.4],
  [0.25, 0.4],
  [0.6, 0.2],
] as const;
const coldest = -5;
const gridStep = 0.5;

const fewestReadings = 6;
/** Shortest stretch, minutes, and least fall, in standard uncertainties of a point. */
const shortest = 3;
const leastFall = 5;
/** A stretch is of one rate where the best law leaves no more than this, as chi-squared a degree of freedom. */
const fitsBelow = 2;
/** Each shorter stretch tried is this part of the one before. */
const shrink = 0.75;

interface Weighted {
  readonly fit: CoolingFit;
  readonly weight: number;
}

/** What the latest readings say of the cooling. */
export interface Cooling {
  /** Minute of the last reading. */
  readonly end: number;
  /** Length of the stretch that the fits rest on, minutes. */
  readonly stretch: number;
  /** By how much the scatter about the best law exceeds what the readings explain; at least 1. */
  readonly inflation: number;
  readonly fits: readonly Weighted[];
}

/**
 * Fits the cooling law to the readings from index `first` on: every
 * surroundings and every n of a grid, each weighted by what is assumed of it
 * beforehand times how well the readings bear it out. Where no law fits all of
 * them, as after the pot was put into a bath or stirred, only the latest
 * readings are used, a quarter fewer at a time.
 *
 * Fails with fewer than 6 readings or 3 minutes of one rate, or where they do not fall.
 */
export const readCooling = (
  readings: HeatingReadings,
  first: number,
  resolution: number,
  surroundings: Surroundings,
): Cooling | CoolDownUnknown => {
  const { minutes } = readings;
  const last = minutes.length;
  const end = minutes[last - 1] ?? 0;
  let start = first;
  while (last - start >= fewestReadings && end - minutes[start]! >= shortest) {
    const points = coolingPoints(readings, start, last, resolution);
    const found = falls(points) ? weightedFits(points, surroundings) : null;
    if (found === null) return "not-cooling";
    const stretch = end - minutes[start]!;
    if (found.inflation <= fitsBelow) return { end, stretch, ...found };
    while (minutes[start]! < end - shrink * stretch) start += 1;
  }
  return "too-few-readings";
};

const falls = ({ celsius, uncertainty }: CoolingPoints): boolean => {
  const last = celsius.length - 1;
  const doubt = Math.hypot(uncertainty[0]!, uncertainty[last]!);
  return celsius[0]! - celsius[last]! >= leastFall * doubt;
};

const weightedFits = (
  points: CoolingPoints,
  surroundings: Surroundings,
): Pick<Cooling, "fits" | "inflation"> | null => {
  const tried: Weighted[] = [];
  const warmest = points.celsius.reduce((low, value) => Math.min(low, value), Infinity);
  for (let at = coldest; at < warmest; at += gridStep)
    for (const [excess, weight] of laws) {
      const fit = fitCooling(points, { surroundings: at, excess });
      if (fit !== null && fit.rate > 0)
        tried.push({ fit, weight: weight * beforehand(at, surroundings) });
    }
  if (tried.length === 0) return null;
  const best = tried.reduce((a, b) => (b.fit.chiSquared < a.fit.chiSquared ? b : a)).fit;
  const least = best.chiSquared;
  const inflation = Math.max(1, best.late, least / Math.max(1, points.minutes.length - 3));
  const fits = tried.map(({ fit, weight }) => ({
    fit,
    weight: weight * Math.exp((least - fit.chiSquared) / (2 * inflation)),
  }));
  const total = fits.reduce((sum, { weight }) => sum + weight, 0);
  return { inflation, fits: fits.map(({ fit, weight }) => ({ fit, weight: weight / total })) };
};

/** Student's t with 3 degrees of freedom: readings that clearly say otherwise prevail. */
const beforehand = (at: number, surroundings: Surroundings): number => {
  const middle =
    surroundings === null ? assumed.middle : (surroundings.low + surroundings.high) / 2;
  const spread =
    surroundings === null
      ? assumed.spread
      : Math.max(leastSpread, (surroundings.high - surroundings.low) / Math.sqrt(12));
  return (1 + ((at - middle) / spread) ** 2 / 3) ** -2;
};
