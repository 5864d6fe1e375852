import { resolutionUncertainty } from "../thermometer/budget.ts";
import { correctionAt, doubtsAt, statementAt } from "../thermometer/correction-at.ts";
import type { CorrectionModel } from "../thermometer/correction-model.ts";
import { readingBehind } from "../thermometer/reading-behind.ts";
import { normalQuantile } from "../stats/normal.ts";
import type { HeatingStep } from "./heating-types.ts";
import { offsetCdf, offsetFrom } from "./offset-distribution.ts";

/** The thermometer behind a heating step: its correction over all readings, and its display's step, degC. */
export interface HeatingThermometer {
  readonly model: CorrectionModel;
  readonly resolution: number;
}

const coverageFactor = normalQuantile(0.975);

/**
 * Expanded uncertainty (95 %) of a corrected reading, degC: the correction's
 * own at the reading behind it, which is large far from every check, and the
 * display's step, as squares (JCGM 100:2008, 5.1.2 and 6.2).
 */
export const expandedAt = ({ model, resolution }: HeatingThermometer, corrected: number): number =>
  Math.hypot(
    correctionAt(model, readingBehind(model, corrected)).expanded,
    coverageFactor * resolutionUncertainty(resolution),
  );

/** Standard uncertainty of the same, degC. */
export const standardAt = ({ model, resolution }: HeatingThermometer, corrected: number): number =>
  Math.hypot(
    correctionAt(model, readingBehind(model, corrected)).standardUncertainty,
    resolutionUncertainty(resolution),
  );

/** Steps to the solution: the uncertainty changes little with the reading, so each gains a digit or more. */
const steps = 30;

/**
 * The corrected reading whose expanded uncertainty just reaches `level`: above
 * it (`over`) or below it (`under`), degC.
 */
export const guardedLevel = (
  thermometer: HeatingThermometer,
  level: number,
  side: "over" | "under",
): number => {
  const sign = side === "over" ? 1 : -1;
  let reading = level;
  for (let step = 0; step < steps; step += 1)
    reading = level + sign * expandedAt(thermometer, reading);
  return reading;
};

/**
 * Probability that the true temperature was at or above `target` where the
 * corrected reading is `level`: the thermometer's offset (a rectangle where
 * only its specification is known, else normal) with the display's step.
 */
export const chanceAtLeast = (
  target: number,
  level: number,
  { model, resolution }: HeatingThermometer,
): number => {
  if (!Number.isFinite(level)) return level > 0 ? 1 : 0;
  const statement = statementAt(model, readingBehind(model, level));
  // The offset's distribution is symmetric, so at least -x is as likely as at most x.
  return offsetCdf(level - target, offsetFrom(statement, [resolutionUncertainty(resolution)]));
};

/** The sources of the doubt of a corrected reading, largest first. */
export const heatingBudget = (
  { model, resolution }: HeatingThermometer,
  corrected: number,
): HeatingStep["uncertainty"] =>
  [
    ...doubtsAt(model, readingBehind(model, corrected)),
    {
      source: "steps of the display",
      standardUncertainty: resolutionUncertainty(resolution),
      from: "measured" as const,
    },
  ].toSorted((a, b) => b.standardUncertainty - a.standardUncertainty);
