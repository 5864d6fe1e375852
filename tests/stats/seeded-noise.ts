/** Uniform numbers in 0..1 from a seed (mulberry32): the same in every run. */
export const seededUniform = (seed: number): (() => number) => {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
};

/** Standard normal numbers from a seed (Box & Muller 1958). */
export const seededNormal = (seed: number): (() => number) => {
  const uniform = seededUniform(seed);
  return () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());
};

/** A stationary first-order autoregressive series of unit variance. */
export const autoregressive = (n: number, r: number, normal: () => number): Float64Array => {
  const series = new Float64Array(n);
  const shock = Math.sqrt(1 - r * r);
  for (let i = 0; i < n; i++)
    series[i] = i === 0 ? normal() : r * series[i - 1]! + shock * normal();
  return series;
};
