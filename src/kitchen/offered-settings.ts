import type { Control, Setting } from "./kitchen.ts";
import { stepAt, stepTolerance } from "./setting.ts";

/** Every position of a control, in its order; a fixed one has one. */
export const offeredSettings = (control: Control): readonly Setting[] => {
  if (control.kind === "fixed") return [{ kind: "fixed" }];
  if (control.kind === "programs") {
    return control.programs.map((program) => ({ kind: "program", program }));
  }
  if (control.kind === "marks") return control.marks.map((mark) => ({ kind: "mark", mark }));
  const { low, high, step } = control;
  const last = Math.floor((high - low) / step + stepTolerance);
  return Array.from({ length: last + 1 }, (_, index) => ({
    kind: "step",
    celsius: stepAt(control, index),
  }));
};
