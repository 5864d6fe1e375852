/** A thermometer's correction, where its water boiled, and the windows it was judged for. */
import { findCulture } from "../../culture/catalogue.ts";
import { analyseThermometer } from "../../kitchen-analysis/thermometers.ts";
import type { ThermometerAnalysis } from "../../kitchen-analysis-types.ts";
import type { Kitchen, KitchenThermometer } from "../../kitchen/kitchen.ts";
import { done } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import type { JudgedWindow, ThermometerFindings } from "../../report/thermometer-terminal.ts";
import { boilingPoint } from "../../thermometer/boiling-point.ts";
import { correctionAt } from "../../thermometer/correction-at.ts";
import { judgeForWindow } from "../../thermometer/window-fitness.ts";
import type { ThermometerOptions } from "./thermometer-options.ts";

export interface NamedWindow {
  /** null for one typed by hand. */
  readonly name: string | null;
  readonly low: number;
  readonly high: number;
}

/** The windows asked about: typed, and of cultures (the kitchen's figures before the catalogue's). */
export const windowsAsked = (
  options: ThermometerOptions,
  kitchen: Kitchen | null,
): Outcome<readonly NamedWindow[]> => {
  const { window } = options;
  const windows: NamedWindow[] = [];
  if (window !== undefined) {
    windows.push({ name: null, low: window.low.celsius, high: window.high.celsius });
  }
  for (const id of new Set(options.culture)) {
    const own = kitchen?.cultures.find((one) => one.id === id);
    const found = own === undefined ? findCulture(id) : done(own);
    if (!found.ok) return found;
    windows.push({ name: found.value.name, low: found.value.low, high: found.value.high });
  }
  return done(windows);
};

const judged = ({ model }: ThermometerAnalysis, window: NamedWindow): JudgedWindow => {
  const middle = correctionAt(model, (window.low + window.high) / 2);
  return { ...window, fitness: judgeForWindow(middle, window.low, window.high) };
};

export const thermometerFindings = (
  thermometer: KitchenThermometer,
  windows: readonly NamedWindow[],
  today: string,
): Pick<ThermometerFindings, "analysis" | "boiling" | "windows"> => {
  const analysis = analyseThermometer(thermometer, today);
  const boiling = thermometer.checks.flatMap((check, at) => {
    const point = check.kind === "boiling" ? boilingPoint(check.place) : null;
    return point === null ? [] : [{ check: at, point }];
  });
  return { analysis, boiling, windows: windows.map((window) => judged(analysis, window)) };
};
