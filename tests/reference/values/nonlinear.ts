import { fitCurve } from "../../../src/stats/curve-fit.ts";
import { boxBod, chwirut2, mgh17, misra1a } from "../../stats/nist-data.ts";
import type { Pairs } from "../../stats/nist-data.ts";
import { value } from "../reference-values.ts";
import type { ReferenceBlock, ReferenceGroup } from "../reference-values.ts";

type Model = (parameters: readonly number[], x: number) => number;

const saturation: Model = ([b1, b2], x) => b1! * (1 - Math.exp(-b2! * x));
const twoExponentials: Model = ([b1, b2, b3, b4, b5], x) =>
  b1! + b2! * Math.exp(-x * b4!) + b3! * Math.exp(-x * b5!);
const ultrasonic: Model = ([b1, b2, b3], x) => Math.exp(-b1! * x) / (b2! + b3! * x);

interface Certified {
  readonly name: string;
  readonly data: Pairs;
  readonly model: Model;
  readonly starts: readonly (readonly number[])[];
  /** Parameter and its standard deviation. */
  readonly parameters: readonly (readonly [string, string])[];
  readonly squares: string;
  readonly residual: string;
}

const certified: readonly Certified[] = [
  {
    name: "Misra1a",
    data: misra1a,
    model: saturation,
    starts: [
      [500, 0.0001],
      [250, 0.0005],
    ],
    parameters: [
      ["2.3894212918E+02", "2.7070075241E+00"],
      ["5.5015643181E-04", "7.2668688436E-06"],
    ],
    squares: "1.2455138894E-01",
    residual: "1.0187876330E-01",
  },
  {
    name: "BoxBOD",
    data: boxBod,
    model: saturation,
    starts: [
      [1, 1],
      [100, 0.75],
    ],
    parameters: [
      ["2.1380940889E+02", "1.2354515176E+01"],
      ["5.4723748542E-01", "1.0455993237E-01"],
    ],
    squares: "1.1680088766E+03",
    residual: "1.7088072423E+01",
  },
  {
    name: "MGH17",
    data: mgh17,
    model: twoExponentials,
    starts: [
      [50, 150, -100, 1, 2],
      [0.5, 1.5, -1, 0.01, 0.02],
    ],
    parameters: [
      ["3.7541005211E-01", "2.0723153551E-03"],
      ["1.9358469127E+00", "2.2031669222E-01"],
      ["-1.4646871366E+00", "2.2175707739E-01"],
      ["1.2867534640E-02", "4.4861358114E-04"],
      ["2.2122699662E-02", "8.9471996575E-04"],
    ],
    squares: "5.4648946975E-05",
    residual: "1.3970497866E-03",
  },
  {
    name: "Chwirut2",
    data: chwirut2,
    model: ultrasonic,
    starts: [
      [0.1, 0.01, 0.02],
      [0.15, 0.008, 0.01],
    ],
    parameters: [
      ["1.6657666537E-01", "3.8303286810E-02"],
      ["5.1653291286E-03", "6.6621605126E-04"],
      ["1.2150007096E-02", "1.5304234767E-03"],
    ],
    squares: "5.1304802941E+02",
    residual: "3.1717133040E+00",
  },
];

/** Each data set fitted from both of its certified starts, without derivatives. */
export const certifiedFits = certified.flatMap(({ name, data: { x, y }, model, starts }) =>
  starts.map((start, i) => ({
    name: `${name}, from start ${i + 1}: ${start.join(", ")}`,
    of: name,
    degreesOfFreedom: x.length - start.length,
    fit: fitCurve({ model, x, y, start })!,
  })),
);

const fromStart = ({ name, of, fit }: (typeof certifiedFits)[number]): ReferenceBlock => {
  const item = certified.find((one) => one.name === of)!;
  return {
    source: `NIST StRD, nonlinear regression, ${name}`,
    asked: { digits: 8 },
    because:
      "the rule for certified nonlinear values is eight digits, six for standard deviations; the sums of squares are flat at the optimum and give nine; no derivatives given",
    values: [
      ...item.parameters.flatMap(([estimate, sd], j) => [
        value(`b${j + 1}`, estimate, fit.parameters[j]!),
        value(`sd of b${j + 1}`, sd, fit.standardUncertainties[j]!, { digits: 6 }),
      ]),
      value("residual sum of squares", item.squares, fit.residualSumOfSquares, { digits: 9 }),
      value("residual sd", item.residual, fit.residualStandardDeviation, { digits: 9 }),
    ],
  };
};

const withDerivatives = (): ReferenceBlock => {
  const fit = fitCurve({
    model: saturation,
    jacobian: ([b1, b2], x) => [1 - Math.exp(-b2! * x), b1! * x * Math.exp(-b2! * x)],
    x: misra1a.x,
    y: misra1a.y,
    start: [500, 0.0001],
  })!;
  return {
    source: "NIST StRD, nonlinear regression, Misra1a, from start 1, derivatives given",
    asked: { digits: 9 },
    because: "one more than the rule, since no differences are taken",
    values: [
      value("b1", "2.3894212918E+02", fit.parameters[0]!),
      value("sd of b2", "7.2668688436E-06", fit.standardUncertainties[1]!),
    ],
  };
};

/** Nonlinear least squares. */
export const nonlinear: ReferenceGroup = {
  title: "Fit of a curve",
  about: ["stats/curve-fit", "stats/curve-jacobian", "stats/curve-step", "stats/householder"],
  blocks: [...certifiedFits.map(fromStart), withDerivatives()],
};
