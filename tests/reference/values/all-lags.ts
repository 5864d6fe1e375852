import { autocorrelations } from "../../../src/stats/autocorrelation.ts";
import { makeFft } from "../../../src/stats/fft.ts";
import { value } from "../reference-values.ts";
import type { ReferenceGroup } from "../reference-values.ts";

const found = autocorrelations([2, 4, 4, 7, 1, 3, 8, 8, 5, 2], 99);
// prettier-ignore
const lags = ["1", "0.07945205479452049", "-0.4472602739726027", "-0.28561643835616435",
  "0.3075342465753425", "0.17465753424657532", "-0.28356164383561644", "-0.13561643835616438",
  "-0.00821917808219175", "0.09863013698630138"];

const real = Float64Array.of(1, 2, 0, -1);
const imaginary = Float64Array.of(0, -1, 0, 2);
makeFft(4)(real, imaginary);

/** Beyond lag one. */
export const allLags: ReferenceGroup = {
  title: "Autocorrelation at every lag",
  about: ["stats/autocorrelation"],
  blocks: [
    {
      source: "NumPy 2.4.6, numpy.correlate of the deviations of 2 4 4 7 1 3 8 8 5 2",
      asked: { absolute: 5e-14 },
      because: "some roundings of numbers up to 1",
      values: lags.map((published, lag) => value(`lag ${lag}`, published, found[lag]!)),
    },
  ],
};

/** Discrete Fourier transform. */
export const fourier: ReferenceGroup = {
  title: "Fourier transform",
  about: ["stats/fft"],
  blocks: [
    {
      source: "NumPy 2.4.6, numpy.fft.fft of 1, 2 - i, 0, -1 + 2i",
      asked: { absolute: 5e-15 },
      because: "exact in whole numbers, so rounding of 1 only",
      values: [2, -2, 0, 4].flatMap((re, k) => [
        value(`frequency ${k}, real part`, String(re), real[k]!),
        value(`frequency ${k}, imaginary part`, String([1, -3, -1, 3][k]), imaginary[k]!),
      ]),
    },
  ],
};
