import type { ThermometerStatement } from "./budget.ts";
import type { CorrectionModel } from "./correction-model.ts";

/**
 * The model of a thermometer of which one statement is known for every reading:
 * its specification, or a correction somebody gave. degC.
 */
export const constantCorrection = (statement: ThermometerStatement): CorrectionModel => ({
  centre: 0,
  correction: statement.correction,
  slope: 0,
  components: [
    {
      source: statement.accuracy === null ? "statement" : "specification",
      shape: "line",
      atCentre: statement.standardUncertainty,
      perDegree: 0,
      correlation: 0,
      degreesOfFreedom: Infinity,
      from: statement.from,
    },
  ],
  from: statement.from,
  accuracy: statement.accuracy,
});
