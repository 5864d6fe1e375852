/** A doubt about a thermometer's check, in words for a terminal. */
import type { SayQuestion } from "../../input/kitchen/doubts.ts";
import { asciiText } from "../../report/clean-text.ts";
import { openQuestionText } from "../../report/wording/check-questions.ts";

export const questionWords: SayQuestion = (question, unit) =>
  asciiText(openQuestionText(question, { unit, space: " ", ascii: true }));
