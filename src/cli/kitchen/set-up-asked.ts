/** Appliance, setting and container of a new water test or batch: as said, else asked at the terminal. */
import type { Appliance, Control, Kitchen } from "../../kitchen/kitchen.ts";
import { parseSetting } from "../../kitchen/setting.ts";
import { done, failed, problemText } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import type { TemperatureUnit } from "../../quantity.ts";
import type { Shell } from "../command-result.ts";
import type { Choice } from "./ask.ts";
import { applianceOf, containerOf } from "./known-ids.ts";

export interface SaidSetUp {
  readonly appliance?: string | undefined;
  readonly setting?: string | undefined;
  readonly container?: string | undefined;
}

export interface AskedSetUp {
  readonly appliance: string;
  readonly setting: string | null;
  readonly container: string;
}

export const stopped = failed("stopped", { what: "every question" });

interface Missing {
  /** The flag, which is a command's name as well. */
  readonly option: string;
  readonly why: string;
}

const noneYet = ({ option, why }: Missing): Outcome<never> => {
  const help = `"holdband ${option.slice(2)} --help" shows how`;
  return failed("option-missing", { option, why: `${why}; none is entered yet, and ${help}` });
};

/** One of several, by its id: asked at a terminal, else missed. */
export const choose = async (
  question: string,
  choices: readonly Choice[],
  missing: Missing,
  shell: Shell,
): Promise<Outcome<string>> => {
  const known = choices.map(({ value }) => value).join(", ");
  if (choices.length === 0) return noneYet(missing);
  if (!shell.asks) {
    return failed("option-missing", { ...missing, why: `${missing.why} (${known})` });
  }
  const chosen = await (await import("./ask.ts")).chooseOne(question, choices);
  return chosen === null ? stopped : done(chosen);
};

/** By their names, with the id where that is another. */
export const choicesOf = (
  entries: readonly { readonly id: string; readonly name: string }[],
): readonly Choice[] =>
  entries.map(({ id, name }) =>
    Object.assign({ value: id, label: name }, name === id ? {} : { hint: id }),
  );

const positions = (control: Control): readonly string[] => {
  if (control.kind === "programs") return control.programs;
  return control.kind === "marks" ? control.marks : [];
};

const askSetting = async (
  appliance: Appliance,
  unit: TemperatureUnit,
  shell: Shell,
): Promise<Outcome<string | null>> => {
  const { control, id, name } = appliance;
  if (control.kind === "fixed") return done(null);
  const why = `${id} can be set, and a verdict is about one setting`;
  if (control.kind !== "steps") {
    const choices = positions(control).map((value) => ({ value, label: value }));
    return choose(`What was ${name} set to?`, choices, { option: "--setting", why }, shell);
  }
  if (!shell.asks) return failed("option-missing", { option: "--setting", why });
  const { askText } = await import("./ask.ts");
  const example = unit === "degF" ? "100F" : "38";
  const typed = await askText(`What was ${name} set to?`, example, (text) => {
    const parsed = parseSetting(appliance, text, unit);
    return parsed.ok ? undefined : problemText(parsed.problem);
  });
  return typed === null ? stopped : done(typed);
};

const settle = async (
  said: string | undefined,
  ask: () => Promise<Outcome<string>>,
): Promise<Outcome<string>> => (said === undefined ? ask() : done(said));

/** Why it is asked. */
interface Purpose {
  readonly appliance: string;
  readonly container: string;
}

const ofWaterTest: Purpose = {
  appliance: "a water test is of one appliance",
  container: "the water stood in something",
};

/** Fails where something is missing and nobody can be asked, or is not in the kitchen. */
export const askSetUp = async (
  kitchen: Kitchen,
  said: SaidSetUp,
  shell: Shell,
  purpose = ofWaterTest,
): Promise<Outcome<AskedSetUp>> => {
  const applianceId = await settle(said.appliance, () => {
    const missing = { option: "--appliance", why: purpose.appliance };
    return choose("Which appliance?", choicesOf(kitchen.appliances), missing, shell);
  });
  if (!applianceId.ok) return applianceId;
  const appliance = applianceOf(kitchen, applianceId.value);
  if (!appliance.ok) return appliance;
  const setting =
    said.setting === undefined
      ? await askSetting(appliance.value, kitchen.shownUnit, shell)
      : done(said.setting);
  if (!setting.ok) return setting;
  const parsed = parseSetting(appliance.value, setting.value, kitchen.shownUnit);
  if (!parsed.ok) return parsed;
  const containerId = await settle(said.container, () => {
    const missing = { option: "--container", why: purpose.container };
    return choose("Which container?", choicesOf(kitchen.containers), missing, shell);
  });
  if (!containerId.ok) return containerId;
  const container = containerOf(kitchen, containerId.value);
  if (!container.ok) return container;
  return done({
    appliance: appliance.value.id,
    setting: setting.value,
    container: container.value.id,
  });
};
