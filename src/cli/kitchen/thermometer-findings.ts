/** A thermometer's correction, where its water boiled, and the windows it was judged for. */
import { analyseThermometer } from "../../kitchen-analysis/thermometers.ts";
import type { ThermometerAnalysis } from "../../kitchen-analysis-types.ts";
import type { NamedWindow } from "../../input/kitchen/windows-asked.ts";
import type { KitchenThermometer } from "../../kitchen/kitchen.ts";
import type { JudgedWindow, ThermometerFindings } from "../../report/thermometer-terminal.ts";
import { boilingPoint } from "../../thermometer/boiling-point.ts";
import { correctionAt } from "../../thermometer/correction-at.ts";
import { judgeForWindow } from "../../thermometer/window-fitness.ts";

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
