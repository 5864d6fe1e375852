/** What a candidate is expected to do, in figures. */
import type { Candidate, Chance } from "../../advice/advice-types.ts";
import type { ExpectedLevel } from "../../advice/response-types.ts";
import { expectedLimits, expectedTemperature } from "../temperature-text.ts";
import type { Writing } from "../writing.ts";
import { probabilityText } from "./probability.ts";

/** "38.0 °C (100.4 °F), between 37.1 and 38.9 °C (98.8 and 102.0 °F)". */
export const levelText = (level: ExpectedLevel, writing: Writing): string => {
  const { mean, standardUncertainty } = level;
  return `${expectedTemperature(writing, mean, standardUncertainty)}, between ${expectedLimits(writing, level, standardUncertainty)}`;
};

/** "93 % likely to hold". */
export const likelyText = (
  { probability }: Pick<Chance, "probability">,
  confidence: number,
  { space }: Writing,
): string => `${probabilityText(probability, confidence, space)} likely to hold`;

/** "expected 38.0 °C (...), between ..., 93 % likely to hold". */
export const outlookText = (
  { level }: Candidate,
  chance: Chance,
  confidence: number,
  writing: Writing,
): string => {
  const likely = likelyText(chance, confidence, writing);
  return level === null ? likely : `expected ${levelText(level, writing)}, ${likely}`;
};
