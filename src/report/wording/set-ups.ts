/** How set-ups are called: names from the kitchen, the id where the kitchen does not know it. */
import type { Kitchen, Setting, SetUp } from "../../kitchen/kitchen.ts";
import { askedTemperature } from "../temperature-text.ts";
import type { Writing } from "../writing.ts";

type Names = Pick<Kitchen, "appliances" | "containers">;

const nameIn = (list: readonly { readonly id: string; readonly name: string }[], id: string) =>
  list.find((one) => one.id === id)?.name ?? id;

export const applianceName = ({ appliances }: Names, { appliance }: Pick<SetUp, "appliance">) =>
  nameIn(appliances, appliance);

export const containerName = ({ containers }: Names, { container }: Pick<SetUp, "container">) =>
  nameIn(containers, container);

/** "38 °C (100.4 °F)", "program Warm", "mark 3"; null where nothing can be set. */
export const settingText = (setting: Setting, writing: Writing): string | null => {
  if (setting.kind === "fixed") return null;
  if (setting.kind === "step") return askedTemperature(writing, setting.celsius);
  return setting.kind === "program" ? `program ${setting.program}` : `mark ${setting.mark}`;
};

const withinAppliance = (kitchen: Names, setUp: SetUp, writing: Writing): string => {
  const setting = settingText(setUp.setting, writing);
  const container = containerName(kitchen, setUp);
  return setting === null ? container : `${setting}, ${container}`;
};

/** Where its appliance stands above it: "38 °C (100.4 °F), Jars in water", "Mark 3, Jars on the rack". */
export const setUpText = (kitchen: Names, setUp: SetUp, writing: Writing): string =>
  withinAppliance(kitchen, setUp, writing).replace(/^(?:mark|program) /, (word) =>
    word.replace(/^./, (letter) => letter.toUpperCase()),
  );

/** In full: "Adjustable cooker, 38 °C (100.4 °F), Jars in water". */
export const fullSetUpText = (kitchen: Names, setUp: SetUp, writing: Writing): string =>
  `${applianceName(kitchen, setUp)}, ${withinAppliance(kitchen, setUp, writing)}`;

const settingKey = (setting: Setting): string =>
  JSON.stringify(
    setting.kind === "step"
      ? Number(setting.celsius.toFixed(6))
      : Object.entries(setting).toSorted(([a], [b]) => (a < b ? -1 : 1)),
  );

/** Equal for set-ups that are the same thing. */
export const setUpKey = ({ appliance, setting, container }: SetUp): string =>
  JSON.stringify([appliance, settingKey(setting), container]);
