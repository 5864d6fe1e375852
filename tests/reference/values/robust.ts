import { baluevFalseAlarm } from "../../../src/stats/false-alarm.ts";
import { powerAt } from "../../../src/stats/lomb-scargle.ts";
import { strongestPeriod } from "../../../src/stats/periodogram.ts";
import { theilSen } from "../../../src/stats/theil-sen.ts";
import { weightedQuantiles } from "../../../src/stats/weighted.ts";
import { lew } from "../../stats/nist-data.ts";
import { value } from "../reference-values.ts";
import type { ReferenceGroup } from "../reference-values.ts";

const sen = theilSen([1, 2, 3, 4, 10, 12, 18], [9, 15, 19, 20, 45, 55, 78], 0.93);
const outlier = theilSen([1, 2, 3, 4, 5, 6, 7], [1, 2, 3, 4, 5, 16, 7]);

/** The median of slopes. */
export const robustSlope: ReferenceGroup = {
  title: "Theil-Sen slope",
  about: ["stats/theil-sen"],
  blocks: [
    {
      source:
        "worked example shipped with SciPy 1.17.1 (Sen 1968, J. Am. Stat. Assoc. 63:1379, from memory)",
      asked: { absolute: 0.005 },
      because: "the interval is printed to two decimals; slope and intercept come out whole",
      values: [
        value("slope", "4", sen.slope, { absolute: 5e-15 }),
        value("intercept", "4", sen.intercept, { absolute: 5e-14 }),
        value("93 % interval, low", "3.71", sen.low),
        value("93 % interval, high", "4.38", sen.high),
        value("93 % interval, low, exactly", "26/7", sen.low, { absolute: 5e-15 }),
        value("93 % interval, high, exactly", "35/8", sen.high, { absolute: 5e-15 }),
      ],
    },
    {
      source: "Helsel & Hirsch, Statistical Methods in Water Resources, 10.1 (case from memory)",
      asked: { absolute: 1e-16 },
      because: "a slope between whole numbers is exact",
      values: [value("slope with one outlier", "1.0", outlier.slope)],
    },
  ],
};

const hazen = weightedQuantiles(
  [3.2, 1.1, 4.8, 2.0, 9.5, 7.7],
  [1, 1, 1, 1, 1, 1],
  [0, 0.025, 0.1, 0.25, 0.5, 0.77, 0.975, 1],
);

/** Quantiles, as the holding band takes them. */
export const quantiles: ReferenceGroup = {
  title: "Quantiles under weights",
  about: ["stats/weighted"],
  blocks: [
    {
      source: "NumPy 2.4.6, numpy.quantile with method hazen, of 3.2 1.1 4.8 2.0 9.5 7.7",
      asked: { absolute: 5e-13 },
      because: "linear interpolation, so to rounding",
      values: ["1.1", "1.1", "1.19", "2", "4", "7.916", "9.5", "9.5"].map((published, i) =>
        value(`quantile ${[0, 0.025, 0.1, 0.25, 0.5, 0.77, 0.975, 1][i]}`, published, hazen[i]!),
      ),
    },
  ],
};

const times = [0, 0.7, 1.9, 3.1, 3.3, 4.8, 6.0, 7.1, 7.9, 9.2];
const wave = [1, 2.2, 0.3, -0.5, -0.2, 1.8, 2.0, -0.4, -1.0, 1.1];
const beam = strongestPeriod(
  lew.map((_, i) => i + 1),
  lew,
  { shortest: 2.2, longest: 50 },
)!;
/** Sums of squares about the mean, and those the beam's best sine leaves. */
const total = 277.332168044316 ** 2 * 199;
const left = Math.sqrt(((1 - beam.power) * total) / 196);

/** A regular swing. */
export const periodogram: ReferenceGroup = {
  title: "Strongest period",
  about: ["stats/periodogram"],
  blocks: [
    {
      source:
        "NIST StRD Lew (beam deflections), least-squares optimum of constant plus sine by SciPy 1.17.1 on a scan of frequencies",
      asked: { absolute: 5e-8 },
      because: "seven decimals of a frequency; residuals are printed to six decimals",
      values: [
        value("frequency", "0.301807034", 1 / beam.period),
        value("residual sd, 196 degrees of freedom", "134.066401", left, { absolute: 5e-4 }),
      ],
    },
  ],
};

/** Power at one frequency. */
export const lombScargle: ReferenceGroup = {
  title: "Power at a frequency of uneven readings",
  about: ["stats/lomb-scargle"],
  blocks: [
    {
      source: "NumPy 2.4.6, share of variance left by numpy.linalg.lstsq; readings constructed",
      asked: { absolute: 5e-13 },
      because: "rounding of a share between 0 and 1",
      values: (
        [
          [0.05, "0.06928769748959218"],
          [0.2, "0.8819595679846445"],
          [0.31, "0.022647208202501545"],
        ] as const
      ).map(([frequency, published]) =>
        value(`power at frequency ${frequency}`, published, powerAt(times, wave, frequency)),
      ),
    },
  ],
};

const evenly = Array.from({ length: 100 }, (_, i) => i);

/** Chance of a peak in noise. */
export const falseAlarm: ReferenceGroup = {
  title: "False alarm probability of a period (Baluev)",
  about: ["stats/false-alarm"],
  blocks: [
    {
      source:
        "fap_baluev of astropy's Lomb-Scargle periodogram (standard normalisation, formulas of its module run on NumPy 2.4.6 and SciPy 1.17.1); times 0 to 99, and ten uneven ones",
      asked: { digits: 11 },
      because: "a power of n / 2 and a ratio of gamma functions, each good to 1e-13",
      values: (
        [
          [0.05, 0.4, evenly, "0.996054000406507"],
          [0.19, 0.4, evenly, "0.005066690257863027"],
          [0.3, 0.4, evenly, "5.775946406221055e-06"],
          [0.5, 0.02, evenly, "3.8409132166953716e-14"],
          [0.19, 2, evenly, "0.02493593559450009"],
          [0.5, 1, times, "0.8488269041784793"],
          [0.9, 1, times, "0.01941057732866688"],
        ] as const
      ).map(([power, bandwidth, at, published]) =>
        value(
          `power ${power}, band up to ${bandwidth}, ${at.length} readings`,
          published,
          baluevFalseAlarm(power, at, bandwidth),
        ),
      ),
    },
  ],
};
