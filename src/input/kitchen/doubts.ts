/** Checks of a thermometer that look wrong, to be asked about before they are stored. */
import { failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import type { TemperatureUnit } from "../../quantity.ts";
import type { CheckQuestion } from "../../thermometer/check-question.ts";
import { thermometerModel } from "../../thermometer/thermometer-model.ts";
import type { Thermometer, ThermometerCheck } from "../../thermometer/thermometer.ts";

/** A question in words; the caller's, for the sentences stand in the report's wording. */
export type SayQuestion = (question: CheckQuestion, unit: TemperatureUnit) => string;

const keyOf = ({ check, code }: CheckQuestion): string => `${check} ${code}`;

/** What keeps checks out of the correction now and did not before. */
const newDoubts = (before: Thermometer | null, after: Thermometer): readonly CheckQuestion[] => {
  const old = before === null ? [] : thermometerModel(before).questions;
  const known = new Set(old.filter(({ leftOut }) => leftOut).map(keyOf));
  return thermometerModel(after).questions.filter((one) => one.leftOut && !known.has(keyOf(one)));
};

const placeNeeded = (check: ThermometerCheck | undefined): Outcome<never> => {
  const hasPressure = check?.kind === "boiling" && check.place.pressure !== null;
  return hasPressure
    ? failed("option-missing", {
        option: "--altitude",
        why: "a pressure at sea level says what it is higher up only with the height",
      })
    : failed("option-missing", {
        option: "--altitude or --pressure",
        why: "water boils cooler the higher one lives, and nothing says where this boiled",
      });
};

/** The questions in words as a problem; null where nothing new looks wrong. */
export const doubtful = (
  before: Thermometer | null,
  after: Thermometer,
  unit: TemperatureUnit,
  say: SayQuestion,
): Outcome<never> | null => {
  const first = before?.checks.length ?? 0;
  const confirmed = after.checks.some((check, at) => at >= first && check.confirmed);
  // A confirmed check may put an older one in doubt; that is shown, and stops nothing.
  const doubts = newDoubts(before, after).filter(({ check }) => !confirmed || check >= first);
  if (doubts.length === 0) return null;
  const placeless = doubts.find(({ code }) => code === "boiling-place-unknown");
  if (placeless !== undefined) return placeNeeded(after.checks[placeless.check]);
  const questions = [...new Set(doubts.map((one) => say(one, unit)))].join(" ");
  return failed("check-doubtful", { questions });
};
