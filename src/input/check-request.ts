/** Options of `check` to the request the core understands. */
import type { AnalysisRequest, ThermometerStatement } from "../analysis.ts";
import { findCulture } from "../culture/catalogue.ts";
import type { Requirement } from "../culture/verdict-types.ts";
import { done, failed } from "../problem.ts";
import type { Outcome } from "../problem.ts";
import { fraction, hours } from "../quantity.ts";
import type { TemperatureUnit } from "../quantity.ts";
import { correctedThermometer, specifiedThermometer } from "../thermometer/budget.ts";
import { readingOptionsOf } from "./file-option-shapes.ts";
import type { CheckOptions } from "./option-shapes.ts";

export const usualShare = 0.95;
export const usualConfidence = 0.95;

const typedWindow = (options: CheckOptions): Outcome<readonly Requirement[]> => {
  const { low, high, ceiling } = options;
  if (low === undefined || high === undefined) return done([]);
  if (low.celsius >= high.celsius) {
    return failed("window-inverted", { low: low.celsius, high: high.celsius });
  }
  if (ceiling !== undefined && ceiling.celsius < high.celsius) {
    return failed("ceiling-below-window", { ceiling: ceiling.celsius, high: high.celsius });
  }
  const window = {
    culture: "window",
    name: "",
    low: low.celsius,
    high: high.celsius,
    ceiling: ceiling?.celsius ?? null,
    hours: hours(options.hours ?? 0),
    share: fraction(options.share ?? usualShare),
  };
  return done([window]);
};

const fromCatalogue = (options: CheckOptions): Outcome<readonly Requirement[]> => {
  const wanted: Requirement[] = [];
  for (const id of new Set(options.culture)) {
    const found = findCulture(id);
    if (!found.ok) return found;
    const { id: culture, name, low, high, ceiling, hours: time, growth } = found.value;
    const share = fraction(options.share ?? usualShare);
    wanted.push({ culture, name, low, high, ceiling, hours: time, share, growth });
  }
  return done(wanted);
};

const thermometerOf = (options: CheckOptions): ThermometerStatement | null => {
  const { correction, correctionUncertainty, thermometerAccuracy: accuracy } = options;
  if (correction !== undefined && correctionUncertainty !== undefined) {
    return correctedThermometer(correction, correctionUncertainty);
  }
  return accuracy === undefined ? null : specifiedThermometer(accuracy, "stated");
};

/** The unit the window was typed in; else the one said for the file; else degC. */
const shownUnit = ({ low, high, unit }: CheckOptions): TemperatureUnit =>
  low?.writtenUnit ?? high?.writtenUnit ?? (low === undefined ? unit : undefined) ?? "degC";

/** Fails where the window cannot be one, or the culture is not in the catalogue. */
export const checkRequest = (options: CheckOptions, version: string): Outcome<AnalysisRequest> => {
  const asked = options.culture.length > 0 ? fromCatalogue(options) : typedWindow(options);
  if (!asked.ok) return asked;
  const { room } = options;
  return done({
    version,
    requirements: asked.value,
    thermometer: thermometerOf(options),
    room: room === undefined ? null : { low: room.low.celsius, high: room.high.celsius },
    runToRun: options.runToRun ?? null,
    share: options.share ?? usualShare,
    confidence: options.confidence ?? usualConfidence,
    shownUnit: shownUnit(options),
    reading: readingOptionsOf(options),
  });
};
