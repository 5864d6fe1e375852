import type { ReferenceGroup } from "./reference-values.ts";
import { allLags, fourier } from "./values/all-lags.ts";
import { chiSquare } from "./values/chi-square.ts";
import { ewmaChart, individuals } from "./values/control-charts.ts";
import { betaFunction, gammaFunctions, normalDistribution } from "./values/distributions.ts";
import { growth } from "./values/growth.ts";
import { guideThermometer } from "./values/guide-thermometer.ts";
import { cooling, lethality } from "./values/heating.ts";
import { linearRegression, polynomial, straightLine } from "./values/linear.ts";
import { nonlinear } from "./values/nonlinear.ts";
import { falseAlarm, lombScargle, periodogram, quantiles, robustSlope } from "./values/robust.ts";
import { studentT } from "./values/student-t.ts";
import { equivalenceTests, fisher, welch } from "./values/tests-of-two.ts";
import { conformity, effectiveDegrees, rectangularBudget } from "./values/uncertainty.ts";
import { univariate } from "./values/univariate.ts";
import { atmosphere, boiling, conversions, saturation } from "./values/water.ts";

/** Every group of published values, in the order of the table. */
export const allReferences: readonly ReferenceGroup[] = [
  univariate,
  allLags,
  fourier,
  normalDistribution,
  gammaFunctions,
  betaFunction,
  studentT,
  chiSquare,
  straightLine,
  linearRegression,
  polynomial,
  nonlinear,
  robustSlope,
  quantiles,
  periodogram,
  lombScargle,
  falseAlarm,
  welch,
  equivalenceTests,
  fisher,
  ewmaChart,
  individuals,
  effectiveDegrees,
  rectangularBudget,
  guideThermometer,
  conformity,
  saturation,
  atmosphere,
  boiling,
  conversions,
  growth,
  lethality,
  cooling,
];
