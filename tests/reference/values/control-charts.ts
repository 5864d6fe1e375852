import { ewma, ewmaLimits } from "../../../src/stats/ewma.ts";
import { individualsChart } from "../../../src/stats/individuals-chart.ts";
import { value } from "../reference-values.ts";
import type { ReferenceGroup } from "../reference-values.ts";

const setting = { centre: 50, deviation: 2.0539, lambda: 0.3, width: 3 };
// prettier-ignore
const data = [52.0, 47.0, 53.0, 49.3, 50.1, 47.0, 51.0, 50.1, 51.2, 50.5,
  49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1];
const points = ewma(data, setting);
const printed =
  "50.60 49.52 50.56 50.18 50.16 49.21 49.75 49.85 50.26 50.33 50.11 49.36 49.52 50.05 49.38 49.92 50.73 51.23 51.94 51.99";
// prettier-ignore
const recomputed = ["50.6", "49.52", "50.564", "50.1848", "50.15936", "49.211552", "49.7480864",
  "49.85366048", "50.257562336", "50.3302936352", "50.1112055446", "49.3578438812", "49.5204907169",
  "50.0543435018", "49.3780404513", "49.9246283159", "50.7272398211", "51.2290678748",
  "51.9403475123", "51.9882432586"];
const limits = ewmaLimits(setting);
const handbook = "NIST/SEMATECH e-Handbook 6.3.2.4, worked example";
const decimal = "the same in decimal arithmetic of 40 digits (Python)";

/** Exponentially weighted moving averages. */
export const ewmaChart: ReferenceGroup = {
  title: "Exponentially weighted moving average",
  about: ["stats/ewma"],
  blocks: [
    {
      source: handbook,
      asked: "as printed",
      because:
        "half of the last printed place; the lower limit is printed from a factor rounded to 0.4201, which moves it by 6e-5",
      values: [
        ...printed
          .split(" ")
          .map((one, i) => value(`average after value ${i + 1}`, one, points[i]!.value)),
        value("upper limit", "52.5884", limits.high),
        value("lower limit", "47.4115", limits.low, { absolute: 1e-4 }),
      ],
    },
    {
      source: decimal,
      asked: { absolute: 5.1e-11 },
      because: "half of the tenth decimal",
      values: recomputed.map((one, i) =>
        value(`average after value ${i + 1}`, one, points[i]!.value),
      ),
    },
    {
      source: decimal,
      asked: { absolute: 5e-10 },
      because: "half of the ninth decimal; the handbook gives the settled limits only",
      values: [
        ...(
          [
            [1, "51.84851"],
            [2, "52.2563940121"],
            [3, "52.4314055708"],
            [5, "52.5516114601"],
            [10, "52.5873988479"],
            [20, "52.5884309141"],
          ] as const
        ).map(([count, high]) =>
          value(`upper limit at value ${count}`, high, points[count - 1]!.high),
        ),
        value("settled upper limit", "52.588431738127", limits.high, { absolute: 5e-12 }),
        value("settled lower limit", "47.411568261873", limits.low, { absolute: 5e-12 }),
      ],
    },
  ],
};

const chart = individualsChart([49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1])!;

/** Chart of single values and their moving ranges. */
export const individuals: ReferenceGroup = {
  title: "Individuals chart",
  about: ["stats/individuals-chart"],
  blocks: [
    {
      source: "NIST/SEMATECH e-Handbook 6.3.2.2, worked example of flow rates",
      asked: "as printed",
      because: "half of the last printed place",
      values: [
        value("centre", "50.81", chart.centre),
        value("mean moving range", "1.8778", chart.meanMovingRange),
        value("upper limit", "55.8041", chart.high),
        value("lower limit", "45.8159", chart.low),
      ],
    },
    {
      source: "the same unrounded, with d2 = 1.128 and D4 = 3.267 (Python)",
      asked: { absolute: 5e-9 },
      because: "half of the eighth decimal",
      values: [
        value("upper limit", "55.804089835", chart.high),
        value("lower limit", "45.815910165", chart.low),
        value("upper limit of the ranges", "6.1347", chart.rangeHigh),
      ],
    },
  ],
};
