import { makeFft, nextPowerOfTwo } from "./fft.ts";
import { mean } from "./summary.ts";

/** Means over the readings of cos and sin, at one and two times a frequency, and of y cos, y sin. */
interface Trigonometric {
  readonly cosine: number;
  readonly sine: number;
  readonly doubleCosine: number;
  readonly doubleSine: number;
  readonly valueCosine: number;
  readonly valueSine: number;
}

/** Share of the variance that a sine with its own mean explains (Zechmeister & Kuerster 2009, eq. 5). */
const powerFrom = (sums: Trigonometric, variance: number): number => {
  const { cosine, sine, doubleCosine, doubleSine, valueCosine, valueSine } = sums;
  const cc = (1 + doubleCosine) / 2 - cosine * cosine;
  const ss = (1 - doubleCosine) / 2 - sine * sine;
  const cs = doubleSine / 2 - cosine * sine;
  const determinant = cc * ss - cs * cs;
  if (!(determinant > 1e-12) || !(variance > 0)) return 0;
  const explained = ss * valueCosine ** 2 + cc * valueSine ** 2 - 2 * cs * valueCosine * valueSine;
  return Math.min(1, Math.max(0, explained / (variance * determinant)));
};

const centred = (values: ArrayLike<number>): { deviations: Float64Array; variance: number } => {
  const centre = mean(values);
  const deviations = new Float64Array(values.length);
  let squares = 0;
  for (let i = 0; i < deviations.length; i++) {
    deviations[i] = values[i]! - centre;
    squares += deviations[i]! ** 2;
  }
  return { deviations, variance: squares / deviations.length };
};

/** Generalised Lomb-Scargle power (0 to 1) at one frequency, by direct sums. */
export const powerAt = (
  times: ArrayLike<number>,
  values: ArrayLike<number>,
  frequency: number,
): number => {
  const { deviations, variance } = centred(values);
  const n = deviations.length;
  const sums = new Float64Array(6);
  for (let i = 0; i < n; i++) {
    const angle = 2 * Math.PI * frequency * times[i]!;
    const c = Math.cos(angle);
    const s = Math.sin(angle);
    sums[0]! += c / n;
    sums[1]! += s / n;
    sums[2]! += (c * c - s * s) / n;
    sums[3]! += (2 * s * c) / n;
    sums[4]! += (deviations[i]! * c) / n;
    sums[5]! += (deviations[i]! * s) / n;
  }
  const [cosine, sine, doubleCosine, doubleSine, valueCosine, valueSine] = sums as unknown as [
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  return powerFrom({ cosine, sine, doubleCosine, doubleSine, valueCosine, valueSine }, variance);
};

/** Spreads a value at a broken position over four grid places (Press & Rybicki's extirpolation). */
const extirpolate = (grid: Float64Array, position: number, value: number): void => {
  const size = grid.length;
  const base = Math.floor(position) - 1;
  const u = position - base;
  const add = (place: number, share: number): void => {
    grid[(base + place + size) & (size - 1)]! += value * share;
  };
  // Lagrange weights of the points 0, 1, 2, 3 for the place u.
  add(0, (-(u - 1) * (u - 2) * (u - 3)) / 6);
  add(1, (u * (u - 2) * (u - 3)) / 2);
  add(2, (-u * (u - 1) * (u - 3)) / 2);
  add(3, (u * (u - 1) * (u - 2)) / 6);
};

/** Frequencies `step` times lowest, lowest + 1, ... */
interface Grid {
  readonly lowest: number;
  readonly step: number;
  readonly count: number;
}

/**
 * Generalised Lomb-Scargle powers on a grid of frequencies, n log n, by two
 * transforms (Press & Rybicki 1989). Times in order from about 0, their span
 * under 1/step. Good to about 0.1 % of the power: refine with `powerAt`.
 */
export const powersOnGrid = (
  times: ArrayLike<number>,
  values: ArrayLike<number>,
  grid: Grid,
): Float64Array => {
  const { deviations, variance } = centred(values);
  const n = deviations.length;
  const size = nextPowerOfTwo(16 * (grid.lowest + grid.count));
  const ones = new Float64Array(size);
  const weighted = new Float64Array(size);
  for (let i = 0; i < n; i++) {
    const position = times[i]! * grid.step * size;
    extirpolate(ones, position, 1 / n);
    extirpolate(weighted, position, deviations[i]! / n);
  }
  // Both real series in one transform, as real and imaginary part.
  makeFft(size)(ones, weighted);
  const powers = new Float64Array(grid.count);
  for (let k = 0; k < grid.count; k++) {
    powers[k] = powerFrom(apart(ones, weighted, grid.lowest + k), variance);
  }
  return powers;
};

/** The sums at grid frequency k from the joint transform (sign: the transform has exp(-i)). */
const apart = (real: Float64Array, imaginary: Float64Array, k: number): Trigonometric => {
  const m = real.length - k;
  const k2 = 2 * k;
  const m2 = real.length - k2;
  return {
    cosine: (real[k]! + real[m]!) / 2,
    sine: (imaginary[m]! - imaginary[k]!) / 2,
    doubleCosine: (real[k2]! + real[m2]!) / 2,
    doubleSine: (imaginary[m2]! - imaginary[k2]!) / 2,
    valueCosine: (imaginary[k]! + imaginary[m]!) / 2,
    valueSine: (real[k]! - real[m]!) / 2,
  };
};
