/** Settings of an appliance: as written, as data, and back. */
import { nearestName } from "../nearest-name.ts";
import { celsiusToFahrenheit } from "../quantity.ts";
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
const stepTolerance = 0.02;

/** Grid points are sums of decimals; this takes the rounding of the sum away. */
const rounded = (value: number): number => Math.round(value * 1e9) / 1e9;

const degrees = (value: number): string => String(Math.round(value * 1000) / 1000);

type Steps = Extract<Control, { kind: "steps" }>;

const stepAt = ({ low, high, step }: Steps, index: number): number =>
  Math.min(high, rounded(low + index * step));

const stepOf = (control: Steps, written: string): Setting | NoSetting => {
  const { low, high, step } = control;
  const all = `a step of ${degrees(step)} from ${degrees(low)} to ${degrees(high)} degC`;
  const typed = parseTemperature(written)?.celsius;
  if (typed === undefined) return { expected: all, suggestion: "" };
  const last = Math.round((high - low) / step);
  const place = (typed - low) / step;
  const nearest = Math.round(place);
  const onGrid = Math.abs(place - nearest) <= stepTolerance && nearest >= 0 && nearest <= last;
  if (onGrid) return { kind: "step", celsius: stepAt(control, nearest) };
  const below = Math.min(Math.max(Math.floor(place), 0), last - 1);
  const two = [below, below + 1].map((index) => degrees(stepAt(control, index)));
  return { expected: `${all}, nearest ${two.join(" or ")}`, suggestion: "" };
};

const nameOf = (what: string, names: readonly string[], written: string): string | NoSetting => {
  const alike = (name: string): boolean => name.toLowerCase() === written.toLowerCase();
  const found = names.find((name) => name === written) ?? names.find(alike);
  if (found !== undefined) return found;
  const suggestion = nearestName(written, names);
  return { expected: `${what} (${names.join(", ")})`, suggestion };
};

/** One position of a control from its text; null or "" where nothing was said. */
export const readSetting = (control: Control, written: string | null): Setting | NoSetting => {
  const text = (written ?? "").trim();
  if (control.kind === "fixed") {
    const none = text === "" || text.toLowerCase() === "fixed";
    return none
      ? { kind: "fixed" }
      : { expected: "no setting, its control is fixed", suggestion: "" };
  }
  if (control.kind === "steps") return stepOf(control, text);
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
 * are taken on the control's grid. Fails with "setting-invalid".
 */
export const parseSetting = (
  appliance: Appliance,
  written: string | number | null,
): Outcome<Setting> => {
  const text = written === null ? null : String(written);
  const found = readSetting(appliance.control, text);
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
