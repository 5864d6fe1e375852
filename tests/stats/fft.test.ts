import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { makeFft, nextPowerOfTwo } from "../../src/stats/fft.ts";

describe("makeFft", () => {
  // NumPy 2.4.6, numpy.fft.fft([1, 2-1j, 0, -1+2j]); exact in whole numbers.
  it("agrees with a reference library", () => {
    const real = Float64Array.of(1, 2, 0, -1);
    const imaginary = Float64Array.of(0, -1, 0, 2);
    makeFft(4)(real, imaginary);
    real.forEach((value, k) => expect(value).toBeCloseTo([2, -2, 0, 4][k]!, 14));
    imaginary.forEach((value, k) => expect(value).toBeCloseTo([1, -3, -1, 3][k]!, 14));
  });

  it("comes back with the arrays swapped, and keeps the energy (Parseval)", () => {
    const signal = fc.array(fc.integer({ min: -1000, max: 1000 }), {
      minLength: 1,
      maxLength: 130,
    });
    fc.assert(
      fc.property(signal, (values) => {
        const n = nextPowerOfTwo(values.length);
        const real = new Float64Array(n);
        real.set(values);
        const imaginary = new Float64Array(n);
        const transform = makeFft(n);
        transform(real, imaginary);
        const energy = real.reduce((sum, re, k) => sum + (re * re + imaginary[k]! ** 2) / n, 0);
        const expected = values.reduce((sum, value) => sum + value * value, 0);
        expect(energy).toBeCloseTo(expected, 6);
        transform(imaginary, real);
        values.forEach((value, i) => expect(real[i]! / n).toBeCloseTo(value, 9));
      }),
    );
  });
});

describe("nextPowerOfTwo", () => {
  it("rounds up", () => {
    expect([0, 1, 2, 3, 4, 5, 1025].map(nextPowerOfTwo)).toEqual([1, 1, 2, 4, 4, 8, 2048]);
  });
});
