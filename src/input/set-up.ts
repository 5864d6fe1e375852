/** Appliance, setting and container of a new water test or batch, as said; what is missing is named. */
import type { Appliance, Kitchen } from "../kitchen/kitchen.ts";
import { parseSetting } from "../kitchen/setting.ts";
import { done, failed } from "../problem.ts";
import type { Outcome } from "../problem.ts";
import { applianceOf, containerOf } from "./known-ids.ts";

export interface SaidSetUp {
  readonly appliance?: string | undefined;
  /** As one would type it. */
  readonly setting?: string | undefined;
  readonly container?: string | undefined;
}

/** Known to the kitchen; `setting` is null where there is nothing to set. */
export interface SettledSetUp {
  readonly appliance: string;
  readonly setting: string | null;
  readonly container: string;
}

/** Why an appliance and a container are asked for. */
export interface SetUpPurpose {
  readonly appliance: string;
  readonly container: string;
}

export const ofWaterTest: SetUpPurpose = {
  appliance: "a water test is of one appliance",
  container: "the water stood in something",
};

export const ofBatch: SetUpPurpose = {
  appliance: "a batch is held in one appliance",
  container: "the batch stood in something",
};

/** Something that was not said, as its flag, which is a command's name as well. */
export interface Missing {
  readonly option: string;
  readonly why: string;
  /** What can be chosen, where it is one of a list; null: it is typed. */
  readonly known: readonly string[] | null;
}

const optionMissing = (option: string, why: string) => failed("option-missing", { option, why });

/** The problem where nobody can be asked. */
export const missingProblem = ({ option, why, known }: Missing) => {
  if (known === null) return optionMissing(option, why);
  if (known.length > 0) return optionMissing(option, `${why} (${known.join(", ")})`);
  const help = `"holdband ${option.slice(2)} --help" shows how`;
  return optionMissing(option, `${why}; none is entered yet, and ${help}`);
};

/** A set-up as far as it goes: all of it, or the first part that is open. */
export type SetUpProgress =
  | { readonly settled: SettledSetUp }
  | {
      readonly open: "appliance" | "setting" | "container";
      readonly missing: Missing;
      /** Whose setting is open; null before it is known. */
      readonly appliance: Appliance | null;
    };

const idsOf = (entries: readonly { readonly id: string }[]): readonly string[] =>
  entries.map(({ id }) => id);

const openSetting = (appliance: Appliance): SetUpProgress => {
  const { control, id } = appliance;
  const why = `${id} can be set, and a verdict is about one setting`;
  const known =
    control.kind === "programs"
      ? control.programs
      : control.kind === "marks"
        ? control.marks
        : null;
  return { open: "setting", missing: { option: "--setting", why, known }, appliance };
};

/** Goes through it in the order in which one would tell it; fails at what is not in the kitchen. */
export const setUpProgress = (
  kitchen: Kitchen,
  said: SaidSetUp,
  purpose: SetUpPurpose,
): Outcome<SetUpProgress> => {
  if (said.appliance === undefined) {
    const known = idsOf(kitchen.appliances);
    const missing = { option: "--appliance", why: purpose.appliance, known };
    return done({ open: "appliance", missing, appliance: null });
  }
  const appliance = applianceOf(kitchen, said.appliance);
  if (!appliance.ok) return appliance;
  const isFixed = appliance.value.control.kind === "fixed";
  if (said.setting === undefined && !isFixed) return done(openSetting(appliance.value));
  const setting = said.setting ?? null;
  const parsed = parseSetting(appliance.value, setting, kitchen.shownUnit);
  if (!parsed.ok) return parsed;
  if (said.container === undefined) {
    const known = idsOf(kitchen.containers);
    const missing = { option: "--container", why: purpose.container, known };
    return done({ open: "container", missing, appliance: appliance.value });
  }
  const container = containerOf(kitchen, said.container);
  if (!container.ok) return container;
  return done({
    settled: { appliance: appliance.value.id, setting, container: container.value.id },
  });
};

/** Fails with "option-missing" where a part was not said, or at what is not in the kitchen. */
export const settledSetUp = (
  kitchen: Kitchen,
  said: SaidSetUp,
  purpose: SetUpPurpose,
): Outcome<SettledSetUp> => {
  const progress = setUpProgress(kitchen, said, purpose);
  if (!progress.ok) return progress;
  return "settled" in progress.value
    ? done(progress.value.settled)
    : missingProblem(progress.value.missing);
};
