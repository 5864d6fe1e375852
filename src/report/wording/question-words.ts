/** A doubt about a thermometer's check as a problem says it: in plain letters. */
import type { TemperatureUnit } from "../../quantity.ts";
import type { CheckQuestion } from "../../thermometer/check-question.ts";
import { asciiText } from "../clean-text.ts";
import { openQuestionText } from "./check-questions.ts";

export const questionWords = (question: CheckQuestion, unit: TemperatureUnit): string =>
  asciiText(openQuestionText(question, { unit, space: " ", ascii: true }));
