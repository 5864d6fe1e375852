/** When two water tests or batches are about the same thing. */
import type { Setting, SetUp } from "./kitchen.ts";

/** Settings closer than this are one: no control is finer, and sums of steps are rounded. */
const closest = 1e-4;

const settingKey = (setting: Setting): string => {
  if (setting.kind === "program") return `program ${setting.program}`;
  if (setting.kind === "mark") return `mark ${setting.mark}`;
  if (setting.kind === "fixed") return "fixed";
  return `step ${Math.round(setting.celsius / closest)}`;
};

/** A text that is the same for the same set-up and for no other; for maps, not for people. */
export const setUpKey = ({ appliance, setting, container }: SetUp): string =>
  JSON.stringify([appliance, settingKey(setting), container]);
