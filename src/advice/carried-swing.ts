import { attenuation } from "../container/attenuation.ts";
import type { ResponseFigure } from "../container/container-response.ts";
import type { FastResidual } from "../culture/fast-residual.ts";
import type { Swing } from "../hold/hold.ts";

/** How a test's swing changes on its way into another container. */
export interface CarriedSwing {
  /** Factors on the swing's size, each with its weight; the weights sum to 1. */
  readonly factors: readonly { readonly factor: number; readonly weight: number }[];
  /** Amplitude of a swing that the test could not show, degC. */
  readonly added: number;
}

export const sameSwing: CarriedSwing = { factors: [{ factor: 1, weight: 1 }], added: 0 };

/** A swing seen through a slow container tells no more than this about the bath's (an assumption). */
const mostFactor = 4;
/** Relative uncertainties smaller than this change nothing worth the time. */
const leastSpread = 0.05;

/** A thermostat's swing nobody saw: peak to peak, degC, and its period, minutes (an assumption). */
export const assumedSwing = { peakToPeak: 0.8, periodMinutes: 20 } as const;

/**
 * The swing of a bath reaches the food with the amplitude ratio of a
 * first-order lag (see attenuation). From one container to another it changes
 * by the quotient of both ratios, whose standard uncertainty is carried along as
 * three weighted factors (Gauss-Hermite, exact to the fifth moment).
 *
 * @param seen in the test; null where none was found
 * @param from lag of the container it was seen in; null for the bath itself
 * @param to lag of the other
 * @param cycling whether a thermostat is at work, so that a slow container may have hidden a swing
 */
export const carriedSwing = (
  seen: Swing | null,
  from: ResponseFigure | null,
  to: ResponseFigure,
  cycling: boolean,
): CarriedSwing => {
  if (seen === null) return { ...sameSwing, added: cycling ? hiddenSwing(from, to) : 0 };
  const whole = { value: 1, standardUncertainty: 0 };
  const before = from === null ? whole : attenuation(from, seen.periodMinutes);
  const after = attenuation(to, seen.periodMinutes);
  const factor = Math.min(mostFactor, after.value / before.value);
  const spread = Math.hypot(
    before.standardUncertainty / before.value,
    after.standardUncertainty / after.value,
  );
  return { factors: weighted(factor, Math.min(1, spread) * factor), added: 0 };
};

/** What an unseen swing gains on the way from one container to a quicker one, amplitude, degC. */
const hiddenSwing = (from: ResponseFigure | null, to: ResponseFigure): number => {
  if (from === null) return 0;
  const { peakToPeak, periodMinutes } = assumedSwing;
  const gained = attenuation(to, periodMinutes).value - attenuation(from, periodMinutes).value;
  return Math.max(0, gained * peakToPeak) / 2;
};

const weighted = (factor: number, deviation: number): CarriedSwing["factors"] => {
  if (deviation <= leastSpread * factor) return [{ factor, weight: 1 }];
  const apart = Math.sqrt(3) * deviation;
  return [
    { factor: Math.max(0, factor - apart), weight: 1 / 6 },
    { factor, weight: 2 / 3 },
    { factor: Math.min(mostFactor, factor + apart), weight: 1 / 6 },
  ];
};

/** A sine of peak-to-peak p has this variance times p squared. */
const sineVariance = 1 / 8;

/**
 * The fast part as it would be with another swing: the swing's share of the
 * variance changes by the factor squared, the rest stays.
 */
export const withSwing = (
  fast: FastResidual,
  seen: Swing | null,
  factor: number,
  added: number,
): FastResidual => {
  const scale = seen === null ? 1 : rescaled(fast, seen, factor);
  const count = fast.values.length;
  return {
    ...fast,
    values: fast.values.map(
      (value, index) => scale * value + added * Math.sin(Math.PI * ((index + 0.5) / count - 0.5)),
    ),
    top: scale * fast.top + added,
  };
};

const rescaled = ({ values }: FastResidual, { peakToPeak }: Swing, factor: number): number => {
  const variance = values.reduce((sum, value) => sum + value ** 2, 0) / values.length;
  if (variance === 0) return 1;
  const swinging = Math.min(variance, sineVariance * peakToPeak ** 2);
  return Math.sqrt((variance + (factor ** 2 - 1) * swinging) / variance);
};
