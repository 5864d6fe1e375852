/** Round ticks and the stretch of a scale that holds what must be seen. */

export interface Stretch {
  readonly low: number;
  readonly high: number;
}

const steps = [1, 2, 5, 10] as const;

/** The 1, 2 or 5 x 10^n step that cuts `span` into at most `most` pieces. */
export const roundStep = (span: number, most: number): number => {
  const least = span / Math.max(most, 1);
  const power = 10 ** Math.floor(Math.log10(least));
  return (steps.find((step) => step * power >= least * (1 - 1e-9)) ?? 10) * power;
};

/** Multiples of `step` inside the stretch. */
export const multiples = ({ low, high }: Stretch, step: number): readonly number[] => {
  const first = Math.ceil(low / step - 1e-9);
  const last = Math.floor(high / step + 1e-9);
  return Array.from({ length: Math.max(last - first + 1, 0) }, (_, index) =>
    Number(((first + index) * step).toFixed(6)),
  );
};

/** Hours between ticks, as clocks are divided: 15 min to days. */
const hourSteps = [0.25, 0.5, 1, 2, 3, 4, 6, 12, 24, 48, 96, 168] as const;
export const hourStep = (hours: number, most: number): number =>
  hourSteps.find((step) => hours / step <= most) ?? roundStep(hours, most);

/** Lowest and highest of an array and of single values, 0 to 1 of nothing; no spreading of long arrays. */
export const stretchOf = (values: ArrayLike<number>, others: readonly number[]): Stretch => {
  let low = Infinity;
  let high = -Infinity;
  for (let index = 0; index < values.length; index += 1) {
    const value = values[index]!;
    if (value < low) low = value;
    if (value > high) high = value;
  }
  const all = { low: Math.min(low, ...others), high: Math.max(high, ...others) };
  return all.low <= all.high ? all : { low: 0, high: 1 };
};

/** A little air on both sides. */
export const widened = ({ low, high }: Stretch, share: number, least: number): Stretch => {
  const air = Math.max((high - low) * share, least);
  return { low: low - air, high: high + air };
};
