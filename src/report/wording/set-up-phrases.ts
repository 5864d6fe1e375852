/** Set-ups inside a sentence: "at 38 °C (100.4 °F), jars in water". */
import type { Kitchen, Setting, SetUp } from "../../kitchen/kitchen.ts";
import type { Writing } from "../writing.ts";
import { everydayName, theEverydayName } from "./everyday-names.ts";
import { applianceName, containerName, settingText } from "./set-ups.ts";

type Names = Pick<Kitchen, "appliances" | "containers">;

/** "the adjustable cooker". */
export const theAppliance = (kitchen: Names, setUp: Pick<SetUp, "appliance">): string =>
  theEverydayName(applianceName(kitchen, setUp));

/** "jars in water". */
export const theContainer = (kitchen: Names, setUp: Pick<SetUp, "container">): string =>
  everydayName(containerName(kitchen, setUp));

const prepositions: Readonly<Record<Setting["kind"], string>> = {
  fixed: "",
  program: "on",
  step: "at",
  mark: "at",
};

/** "at 38 °C (100.4 °F)", "on program Warm", "at mark 3"; null where nothing can be set. */
export const atSetting = (setting: Setting, writing: Writing): string | null => {
  const text = settingText(setting, writing);
  return text === null ? null : `${prepositions[setting.kind]} ${text}`;
};

/** "at mark 3, jars on the rack"; where nothing can be set, "jars on the rack". */
export const withinTheAppliance = (kitchen: Names, setUp: SetUp, writing: Writing): string => {
  const setting = atSetting(setUp.setting, writing);
  const container = theContainer(kitchen, setUp);
  return setting === null ? container : `${setting}, ${container}`;
};

/** "the warming box at mark 3, jars on the rack"; "the cupboard, jars in water". */
export const theSetUp = (kitchen: Names, setUp: SetUp, writing: Writing): string =>
  [
    theAppliance(kitchen, setUp) + (setUp.setting.kind === "fixed" ? "," : ""),
    withinTheAppliance(kitchen, setUp, writing),
  ].join(" ");
