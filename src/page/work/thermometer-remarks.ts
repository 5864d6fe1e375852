/** A thermometer after its check, as `thermometer` says it: what to add, how sure that is, what looks odd. */
import { analyseThermometer } from "../../kitchen-analysis/thermometers.ts";
import type { Kitchen } from "../../kitchen/kitchen.ts";
import { checkQuestionText } from "../../report/wording/check-questions.ts";
import { correctionRows, knownText } from "../../report/wording/thermometers.ts";
import { plainWriting } from "../../report/writing.ts";

export const thermometerRemarks = (
  { thermometers, shownUnit }: Kitchen,
  id: string,
  today: string,
): readonly string[] => {
  const thermometer = thermometers.find((one) => one.id === id);
  if (thermometer === undefined) return [];
  const writing = plainWriting(shownUnit);
  const analysis = analyseThermometer(thermometer, today);
  const rows = correctionRows(analysis, writing).map(
    ({ at, text }) => `${at === null ? "at any reading" : `at ${at}`} ${text}`,
  );
  return [
    `${thermometer.name}: ${knownText(analysis, writing)}`,
    `Add to what it shows, with expanded uncertainty (95 of 100 such cases): ${rows.join("; ")}.`,
    ...analysis.questions.map((question) => checkQuestionText(question, writing)),
  ];
};
