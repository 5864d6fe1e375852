/** What else an appliance can be set to, without saying which of it would do. */
import type { Control, Setting } from "../../kitchen/kitchen.ts";
import { askedTemperature } from "../temperature-text.ts";
import type { Writing } from "../writing.ts";

/** What a kitchen knows of a tested set-up. */
export interface KnownSetUp {
  readonly control: Control;
  readonly setting: Setting;
  /** How many tests its answers rest on. */
  readonly tests: number;
}

const mostNamed = 6;

const named = (all: readonly string[]): string =>
  all.length > mostNamed
    ? `${all.slice(0, mostNamed).join(", ")} and ${all.length - mostNamed} more`
    : all.join(", ");

const list = (what: string, all: readonly string[], own: string): string | null => {
  const others = all.filter((one) => one !== own);
  if (others.length === 0) return null;
  return others.length === 1
    ? `It has one other ${what} (${others[0]}): test that with water`
    : `It has other ${what}s (${named(others)}): test another with water`;
};

/** Smaller differences of two steps, degC, are arithmetic, not another setting. */
const sameStep = 1e-6;

/** null where there is no other setting, or on a scale none on the wanted side. */
export const otherSettings = (
  { control, setting }: KnownSetUp,
  wanted: "lower" | "higher",
  writing: Writing,
): string | null => {
  if (control.kind === "programs") {
    return list("program", control.programs, setting.kind === "program" ? setting.program : "");
  }
  if (control.kind === "marks") {
    return list("mark", control.marks, setting.kind === "mark" ? setting.mark : "");
  }
  if (control.kind !== "steps" || setting.kind !== "step") return null;
  const end = wanted === "lower" ? control.low : control.high;
  if (Math.abs(end - setting.celsius) < sameStep) return null;
  return `It can be set ${wanted}, ${wanted === "lower" ? "down" : "up"} to ${askedTemperature(writing, end)}: test a ${wanted} setting with water`;
};
