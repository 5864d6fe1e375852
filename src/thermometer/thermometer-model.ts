import { celsiusDifference } from "../quantity.ts";
import { assumedThermometer, specifiedThermometer } from "./budget.ts";
import type { CheckQuestion } from "./check-question.ts";
import { checkPoints } from "./check-points.ts";
import { checkedCorrection } from "./checked-correction.ts";
import { constantCorrection } from "./constant-correction.ts";
import type { CorrectionModel } from "./correction-model.ts";
import { checkQuestions } from "./questions.ts";
import type { Thermometer } from "./thermometer.ts";

/** A thermometer's correction, what looks doubtful in its checks, and which of them it rests on. */
export interface ThermometerModel {
  readonly model: CorrectionModel;
  readonly questions: readonly CheckQuestion[];
  /** Indices of the checks behind the model; none: specification or assumption. */
  readonly used: readonly number[];
}

const unchecked = (accuracy: number | null): CorrectionModel =>
  constantCorrection(
    accuracy === null
      ? assumedThermometer
      : specifiedThermometer(celsiusDifference(accuracy), "stated"),
  );

/**
 * The correction of a thermometer from its checks. Doubtful checks are left out
 * until they are confirmed. One temperature gives an offset, several that lie
 * far enough apart a line (see checkedCorrection); without a usable check it is
 * the specification, or what is assumed without one. Never fails.
 */
export const thermometerModel = (thermometer: Thermometer): ThermometerModel => {
  const questions = checkQuestions(thermometer);
  const leftOut = new Set(questions.filter((one) => one.leftOut).map((one) => one.check));
  const candidates = thermometer.checks.map((_, index) => index);
  const points = checkPoints(
    thermometer,
    candidates.filter((index) => !leftOut.has(index)),
  );
  const model =
    points.length === 0
      ? unchecked(thermometer.accuracy)
      : checkedCorrection(points, thermometer.accuracy);
  return { model, questions, used: points.map((point) => point.check) };
};
