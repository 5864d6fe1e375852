import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { makeFft, nextPowerOfTwo } from "../../src/stats/fft.ts";
import { describeReferences } from "../reference/describe-references.ts";
import { fourier } from "../reference/values/all-lags.ts";

describeReferences(fourier);

describe("makeFft", () => {
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
