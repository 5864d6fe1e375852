import { monthsBetween } from "../advice/calendar-days.ts";
import type { ThermometerAnalysis } from "../kitchen-analysis-types.ts";
import type { KitchenThermometer } from "../kitchen/kitchen.ts";
import { notice, type Notice } from "../notice.ts";
import { assumedAccuracy } from "../thermometer/budget.ts";
import { lastChecked } from "../thermometer/check-age.ts";
import { correctionAt, doubtsAt } from "../thermometer/correction-at.ts";
import { thermometerModel } from "../thermometer/thermometer-model.ts";

/** Readings at which a correction is told: room, two cultures' targets, the milk's heating step; degC. */
const toldAt = [20, 38, 43, 90];
/** Where most cultures are kept, degC. */
const doubtsToldAt = 38;

/** One thermometer's correction, what looks wrong in its checks, and how old they are. */
export const analyseThermometer = (
  thermometer: KitchenThermometer,
  today: string,
): ThermometerAnalysis => {
  const { model, questions, used } = thermometerModel(thermometer);
  const checked = lastChecked(
    used.map((index) => thermometer.checks[index]!),
    today,
  );
  return {
    thermometer,
    model,
    corrections: toldAt.map((reading) => correctionAt(model, reading)),
    doubts: { reading: doubtsToldAt, parts: doubtsAt(model, doubtsToldAt) },
    questions,
    checked:
      checked === null ? null : { ...checked, monthsAgo: monthsBetween(checked.date, today) },
  };
};

/** Older than this a check is old; common practice is to check once a year. */
const oldAfterDays = 365;

/** What the person should know of a thermometer before trusting what rests on it. */
export const thermometerNotices = (analysis: ThermometerAnalysis): readonly Notice[] => {
  const { thermometer, questions, checked } = analysis;
  const { name, checks, accuracy } = thermometer;
  if (checks.length === 0) {
    const from = accuracy === null ? "assumed" : "stated";
    const known = accuracy ?? assumedAccuracy;
    return [notice("thermometer-unchecked", { thermometer: name, accuracy: known, from })];
  }
  const leftOut = new Set(questions.filter((one) => one.leftOut).map(({ check }) => check));
  const notices: Notice[] = [...leftOut].map((check) =>
    notice("check-left-out", { thermometer: name, check: checkName(thermometer, check) }),
  );
  if (checked !== null && checked.daysAgo > oldAfterDays) {
    notices.push(notice("check-old", { thermometer: name, months: checked.monthsAgo }));
  }
  return notices;
};

const kindNames = {
  ice: "melting ice",
  boiling: "boiling water",
  reference: "against a reference",
} as const;

/** "melting ice, 2026-02-14"; its place in the list where it has no date. */
const checkName = ({ checks }: KitchenThermometer, index: number): string => {
  const check = checks[index];
  if (check === undefined) return `number ${index + 1}`;
  return `${kindNames[check.kind]}, ${check.date ?? `number ${index + 1}`}`;
};
