/** A doubt about a thermometer's check in words, as the command line says it. */
import type { SayQuestion } from "../../input/kitchen/doubts.ts";
import { asciiText } from "../../report/clean-text.ts";
import { openQuestionText } from "../../report/wording/check-questions.ts";

export const questionInWords: SayQuestion = (question, unit) =>
  asciiText(openQuestionText(question, { unit, space: " ", ascii: true }));
