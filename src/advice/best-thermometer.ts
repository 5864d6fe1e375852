import { correctionAt } from "../thermometer/correction-at.ts";
import { judgeForWindow } from "../thermometer/window-fitness.ts";
import type { AdviceInput } from "./advice-input.ts";
import type { NextTest } from "./next-types.ts";

/**
 * The kitchen's thermometer whose correction is known best at a level, and
 * whether that is good enough for a window; null in a kitchen without one.
 */
export const bestThermometer = (
  { thermometers }: Pick<AdviceInput, "thermometers">,
  level: number,
  window: { readonly low: number; readonly high: number },
): NextTest["thermometer"] => {
  const known = thermometers
    .map(({ id, model }) => ({ id, correction: correctionAt(model, level) }))
    .toSorted((a, b) => a.correction.standardUncertainty - b.correction.standardUncertainty);
  const [best] = known;
  if (best === undefined) return null;
  return {
    id: best.id,
    standardUncertainty: best.correction.standardUncertainty,
    word: judgeForWindow(best.correction, window.low, window.high).word,
  };
};
