/** Settings of an appliance: as written, as data, and back. */
import { nearestName } from "../nearest-name.ts";
import { celsiusDifferenceToFahrenheit, celsiusToFahrenheit } from "../quantity.ts";
import type { TemperatureUnit } from "../quantity.ts";
import { parseTemperature } from "../quantity-text.ts";
import { done, failed } from "../problem.ts";
import type { Outcome } from "../problem.ts";
import type { Appliance, Control, Setting } from "./kitchen.ts";

/** Why a setting is not one of the control's; the appliance's name goes before it. */
export interface NoSetting {
  readonly expected: string;
  readonly suggestion: string;
}

/** A typed 100.3F or 37.8 may miss its step by this part of it; displays print no finer. */
export const stepTolerance = 0.02;

/** Grid points are sums of decimals; this takes the rounding of the sum away. */
const rounded = (value: number): number => Math.round(value * 1e9) / 1e9;

const degrees = (value: number): string => String(Math.round(value * 1000) / 1000);

type Steps = Extract<Control, { kind: "steps" }>;

/** The control's setting number `index`, counted from its lowest, degC. */
export const stepAt = ({ low, high, step }: Steps, index: number): number =>
  Math.min(high, rounded(low + index * step));

const onGrid = (control: Steps, celsius: number): Setting | null => {
  const { low, high, step } = control;
  const place = (celsius - low) / step;
  const nearest = Math.round(place);
  const last = Math.round((high - low) / step);
  const isStep = Math.abs(place - nearest) <= stepTolerance && nearest >= 0 && nearest <= last;
  return isStep ? { kind: "step", celsius: stepAt(control, nearest) } : null;
};

const inUnit = (celsius: number, unit: TemperatureUnit): string =>
  degrees(unit === "degF" ? celsiusToFahrenheit(celsius) : celsius);

/** The step below and the one above, or the end that is nearer. */
const nearestSteps = (control: Steps, celsius: number, unit: TemperatureUnit): string => {
  const { low, high, step } = control;
  if (celsius <= low) return inUnit(low, unit);
  if (celsius >= high) return inUnit(high, unit);
  const below = Math.floor((celsius - low) / step);
  return [below, below + 1].map((index) => inUnit(stepAt(control, index), unit)).join(" or ");
};

const stepOf = (control: Steps, written: string, unit: TemperatureUnit): Setting | NoSetting => {
  const { low, high, step } = control;
  const size = degrees(unit === "degF" ? celsiusDifferenceToFahrenheit(step) : step);
  const all = `a step of ${size} from ${inUnit(low, unit)} to ${inUnit(high, unit)} ${unit}`;
  const typed = parseTemperature(written);
  if (typed === null) return { expected: all, suggestion: "" };
  const found = onGrid(control, typed.celsius);
  if (found !== null) return found;
  const lettered = typed.writtenUnit === null ? `${written}F` : "";
  const meant = parseTemperature(lettered);
  if (meant !== null && onGrid(control, meant.celsius) !== null) {
    return { expected: all, suggestion: lettered };
  }
  const nearest = nearestSteps(control, typed.celsius, unit);
  return { expected: `${all}, nearest ${nearest}`, suggestion: "" };
};

const nameOf = (what: string, names: readonly string[], written: string): string | NoSetting => {
  const alike = (name: string): boolean => name.toLowerCase() === written.toLowerCase();
  const found = names.find((name) => name === written) ?? names.find(alike);
  if (found !== undefined) return found;
  const suggestion = nearestName(written, names);
  return { expected: `${what} (${names.join(", ")})`, suggestion };
};

/** One position of a control from its text; null or "" where nothing was said. `unit` is for sentences. */
export const readSetting = (
  control: Control,
  written: string | null,
  unit: TemperatureUnit = "degC",
): Setting | NoSetting => {
  const text = (written ?? "").trim();
  if (control.kind === "fixed") {
    const none = text === "" || text.toLowerCase() === "fixed";
    return none
      ? { kind: "fixed" }
      : { expected: "no setting, its control is fixed", suggestion: "" };
  }
  if (control.kind === "steps") return stepOf(control, text, unit);
  if (control.kind === "programs") {
    const program = nameOf("one of its programs", control.programs, text);
    return typeof program === "string" ? { kind: "program", program } : program;
  }
  const mark = nameOf("one of its marks", control.marks, text);
  return typeof mark === "string" ? { kind: "mark", mark } : mark;
};

export const isSetting = (found: Setting | NoSetting): found is Setting => "kind" in found;

/**
 * The setting a person typed for an appliance: "38", 38, "100.4F", a program,
 * a mark; null where nothing was said, which a fixed control asks for. Steps
 * are taken on the control's grid. Fails with "setting-invalid", in words of `unit`.
 */
export const parseSetting = (
  appliance: Appliance,
  written: string | number | null,
  unit: TemperatureUnit = "degC",
): Outcome<Setting> => {
  const text = written === null ? null : String(written);
  const found = readSetting(appliance.control, text, unit);
  if (isSetting(found)) return done(found);
  return failed("setting-invalid", {
    appliance: appliance.name,
    found: text === null || text.trim() === "" ? "none" : `"${text}"`,
    ...found,
  });
};

/** A setting as one would type it again: "38 degC", "100.4 degF", a program, a mark, "fixed". */
export const settingText = (setting: Setting, unit: TemperatureUnit = "degC"): string => {
  if (setting.kind === "program") return setting.program;
  if (setting.kind === "mark") return setting.mark;
  if (setting.kind === "fixed") return "fixed";
  const value = unit === "degF" ? celsiusToFahrenheit(setting.celsius) : setting.celsius;
  return `${degrees(value)} ${unit}`;
};
