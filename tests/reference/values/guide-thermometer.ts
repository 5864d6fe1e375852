import { fitLine, predictLine } from "../../../src/stats/line-fit.ts";
import { studentTQuantile } from "../../../src/stats/student-t.ts";
import { fitCorrectionLine } from "../../../src/thermometer/calibration-line.ts";
import { componentUncertainty } from "../../../src/thermometer/component-uncertainty.ts";
import { correctionAt } from "../../../src/thermometer/correction-at.ts";
import { lineComponents } from "../../../src/thermometer/line-components.ts";
import { thermometerModel } from "../../../src/thermometer/thermometer-model.ts";
import { guideCorrections, guideReadings, pointAt } from "../../thermometer/point.ts";
import { value } from "../reference-values.ts";
import type { ReferenceBlock, ReferenceGroup, ReferenceValue } from "../reference-values.ts";

/** What H.3 prints, then the same by mpmath. */
interface Figures {
  readonly y1: number;
  readonly uy1: number;
  readonly y2: number;
  readonly uy2: number;
  readonly correlation: number;
  readonly b30: number;
  readonly ub30: number;
  readonly expanded: number;
}

const printed = (found: Figures): readonly ReferenceValue[] => [
  value("y1, correction at 20 degC", "-0.1712", found.y1),
  value("u(y1)", "0.0029", found.uy1),
  value("y2, slope", "0.00218", found.y2),
  value("u(y2)", "0.00067", found.uy2),
  value("r(y1, y2)", "-0.930", found.correlation),
  value("b(30 degC)", "-0.1494", found.b30),
  value("u[b(30 degC)]", "0.0041", found.ub30),
];
const unrounded = (found: Figures): readonly ReferenceValue[] => [
  value("y1, correction at 20 degC", "-0.171203790131", found.y1),
  value("u(y1)", "0.002877597835", found.uy1),
  value("y2, slope", "0.00218269773989", found.y2, { absolute: 5e-14 }),
  value("u(y2)", "0.0006679387732", found.uy2, { absolute: 5e-13 }),
  value("r(y1, y2)", "-0.9304296031", found.correlation, { absolute: 5e-10 }),
  value("b(30 degC)", "-0.1493768127", found.b30, { absolute: 5e-10 }),
  value("u[b(30 degC)]", "0.004138595753", found.ub30),
  value("U95 with t of 9", "0.009362154", found.expanded, { absolute: 5e-9 }),
];

const blocks = (by: string, found: Figures): readonly ReferenceBlock[] => [
  {
    source: `JCGM 100:2008, H.3 and table H.6, by ${by}`,
    asked: "as printed",
    because: "half of the last printed place",
    values: printed(found),
  },
  {
    source: `the same by mpmath 1.3.0 with 40 digits, by ${by}`,
    asked: { absolute: 5e-12 },
    because: "half of the eleventh decimal, fewer where fewer are known",
    values: unrounded(found),
  },
];

const fit = fitLine(
  guideReadings.map((t) => t - 20),
  guideCorrections,
);
const at30 = predictLine(fit, 10);
const byLine: Figures = {
  y1: fit.intercept,
  uy1: fit.interceptUncertainty,
  y2: fit.slope,
  uy2: fit.slopeUncertainty,
  correlation: fit.covariance / (fit.interceptUncertainty * fit.slopeUncertainty),
  b30: at30.value,
  ub30: at30.standardUncertainty,
  expanded: studentTQuantile(0.975, 9) * at30.standardUncertainty,
};

const { model } = thermometerModel({
  resolution: 0,
  accuracy: null,
  checks: guideReadings.map((t, i) => ({
    kind: "reference",
    truth: t + guideCorrections[i]!,
    truthUncertainty: 0,
    readings: [t],
    date: null,
    confirmed: false,
  })),
});
const [model20, model30] = [correctionAt(model, 20), correctionAt(model, 30)];
const slopeDoubt = model.components.flatMap((one) =>
  one.source === "scatter of checks" && one.shape === "line" ? [one.perDegree] : [],
)[0]!;
const byModel: Figures = {
  y1: model20.correction,
  uy1: model20.standardUncertainty,
  y2: model.slope,
  uy2: slopeDoubt,
  correlation:
    (model30.standardUncertainty ** 2 - model20.standardUncertainty ** 2 - 100 * slopeDoubt ** 2) /
    (20 * model20.standardUncertainty * slopeDoubt),
  b30: model30.correction,
  ub30: model30.standardUncertainty,
  expanded: model30.expanded,
};

const line = fitCorrectionLine(guideReadings.map((t, i) => pointAt(t, t + guideCorrections[i]!)));
const scatterAt = (reading: number): number =>
  Math.hypot(...lineComponents(line).map((one) => componentUncertainty(one, line.centre, reading)));
const forgotten = componentUncertainty(
  {
    source: "statement",
    shape: "line",
    degreesOfFreedom: Infinity,
    from: "stated",
    atCentre: 0.002877597835,
    perDegree: 0.0006679387732,
    correlation: 0,
  },
  20,
  30,
);

/** The guide's thermometer. */
export const guideThermometer: ReferenceGroup = {
  title: "Thermometer calibration of JCGM 100, H.3",
  about: [
    "stats/line-fit",
    "thermometer/calibration-line",
    "thermometer/component-uncertainty",
    "thermometer/line-components",
    "thermometer/thermometer-model",
    "thermometer/correction-at",
  ],
  blocks: [
    ...blocks("the straight line", byLine),
    ...blocks("the thermometer's model, its reference faultless", byModel),
    {
      source: "the same by mpmath 1.3.0 with 40 digits, by the correction line and its doubts",
      asked: { absolute: 5e-12 },
      because: "half of the eleventh decimal, fewer where fewer are known",
      values: [
        value(
          "correction at 20 degC",
          "-0.171203790131",
          line.correction + line.slope * (20 - line.centre),
        ),
        value("slope", "0.00218269773989", line.slope, { absolute: 5e-14 }),
        value("doubt at 20 degC", "0.002877597835", scatterAt(20)),
        value("doubt at 30 degC", "0.004138595753", scatterAt(30)),
        value("residual at 23.003 degC", "0.00565", line.points[3]!.residual, { absolute: 5e-6 }),
        value("residual at 26.511 degC", "-0.00301", line.points[10]!.residual, { absolute: 5e-6 }),
        value("doubt at 30 degC, had the correlation been forgotten", "0.0072728804", forgotten, {
          absolute: 5e-10,
        }),
        value("residual sd, 9 degrees of freedom", "0.003497563964", fit.residualStandardDeviation),
      ],
    },
  ],
};
