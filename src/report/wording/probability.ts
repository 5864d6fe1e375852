import { percent } from "../number-format.ts";

/**
 * A probability in whole per cent, never "0 %" or "100 %". Where rounding would
 * carry it across the line between two verdicts it says "just under" or "just
 * over", so that word and number never contradict each other.
 */
export const probabilityText = (probability: number, confidence: number, space: string): string => {
  const clamped = Math.min(Math.max(probability, 1e-9), 1 - 1e-9);
  const rounded = Math.round(clamped * 100) / 100;
  if (clamped < confidence && rounded >= confidence) {
    return `just under ${percent(confidence, space)}`;
  }
  if (clamped > 1 - confidence && rounded <= 1 - confidence) {
    return `just over ${percent(1 - confidence, space)}`;
  }
  return percent(clamped, space);
};
