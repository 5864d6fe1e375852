import { correctionAt } from "../thermometer/correction-at.ts";
import { judgeForWindow } from "../thermometer/window-fitness.ts";
import type { AdviceInput } from "./advice-input.ts";
import type { NextTest } from "./next-types.ts";

type Known = AdviceInput["thermometers"][number];

/** The thermometer whose correction is known best at a level; null in a kitchen without one. */
export const leastDoubtful = (thermometers: readonly Known[], level: number): Known | null => {
  const doubt = ({ model }: Known): number => correctionAt(model, level).standardUncertainty;
  return thermometers.toSorted((a, b) => doubt(a) - doubt(b))[0] ?? null;
};

/** That thermometer, and whether it is good enough for a window; null in a kitchen without one. */
export const bestThermometer = (
  { thermometers }: Pick<AdviceInput, "thermometers">,
  level: number,
  window: { readonly low: number; readonly high: number },
): NextTest["thermometer"] => {
  const best = leastDoubtful(thermometers, level);
  if (best === null) return null;
  const correction = correctionAt(best.model, level);
  return {
    id: best.id,
    standardUncertainty: correction.standardUncertainty,
    word: judgeForWindow(correction, window.low, window.high).word,
  };
};
