const reverseBits = (real: Float64Array, imaginary: Float64Array): void => {
  const n = real.length;
  for (let i = 1, j = 0; i < n; i++) {
    let bit = n >> 1;
    for (; j & bit; bit >>= 1) j ^= bit;
    j ^= bit;
    if (i >= j) continue;
    const re = real[i]!;
    const im = imaginary[i]!;
    real[i] = real[j]!;
    imaginary[i] = imaginary[j]!;
    real[j] = re;
    imaginary[j] = im;
  }
};

/** cos and sin of 2 pi k / n for k < n/2, each computed afresh so that errors do not grow. */
const turns = (n: number): { cosines: Float64Array; sines: Float64Array } => {
  const cosines = new Float64Array(n >> 1);
  const sines = new Float64Array(n >> 1);
  for (let k = 0; k < cosines.length; k++) {
    cosines[k] = Math.cos((2 * Math.PI * k) / n);
    sines[k] = Math.sin((2 * Math.PI * k) / n);
  }
  return { cosines, sines };
};

/** Smallest power of two that is at least `n`. */
export const nextPowerOfTwo = (n: number): number => 2 ** Math.ceil(Math.log2(Math.max(1, n)));

/** A transform of one length, its table of turns made once. */
export type Fft = (real: Float64Array, imaginary: Float64Array) => void;

/**
 * Discrete Fourier transform in place, X_k = sum x_j exp(-2 pi i j k / n), for
 * one length `n`, a power of two (Cooley & Tukey 1965). For the inverse swap
 * the two arrays and divide by n.
 */
export const makeFft = (n: number): Fft => {
  const { cosines, sines } = turns(n);
  return (real, imaginary) => {
    reverseBits(real, imaginary);
    for (let half = 1; half < n; half *= 2) {
      const stride = n / (2 * half);
      for (let k = 0; k < half; k++) {
        const c = cosines[k * stride]!;
        const s = sines[k * stride]!;
        for (let i = k; i < n; i += 2 * half) {
          const j = i + half;
          const re = real[j]! * c + imaginary[j]! * s;
          const im = imaginary[j]! * c - real[j]! * s;
          real[j] = real[i]! - re;
          imaginary[j] = imaginary[i]! - im;
          real[i]! += re;
          imaginary[i]! += im;
        }
      }
    }
  };
};
