/** What need not be said of a new batch: taken from the kitchen, or from the last batch of its culture. */
import type { Batch, Kitchen, Setting } from "../../kitchen/kitchen.ts";
import { celsiusToFahrenheit } from "../../quantity.ts";
import type { TemperatureUnit } from "../../quantity.ts";
import type { SaidSetUp } from "../set-up.ts";

/** Something nobody said, and where it is from; of null: there is only one. */
export interface Taken {
  readonly what: "appliance" | "setting" | "container" | "culture";
  readonly value: string;
  readonly from: Pick<Batch, "date"> | null;
}

export interface FilledSetUp {
  readonly setUp: SaidSetUp;
  readonly taken: readonly Taken[];
}

const thousandths = (value: number): number => Math.round(value * 1000) / 1000;

/** As one would type it again; null where nothing can be set. */
export const typedSetting = (setting: Setting, unit: TemperatureUnit): string | null => {
  if (setting.kind === "program") return setting.program;
  if (setting.kind === "mark") return setting.mark;
  if (setting.kind === "fixed") return null;
  return unit === "degF"
    ? `${thousandths(celsiusToFahrenheit(setting.celsius))}F`
    : String(thousandths(setting.celsius));
};

/** Of one day the one that stands later in the log. */
const newest = (batches: readonly Batch[]): Batch | null =>
  batches.reduce<Batch | null>(
    (last, one) => (last === null || one.date >= last.date ? one : last),
    null,
  );

const only = (entries: readonly { readonly id: string }[]): string | undefined =>
  entries.length === 1 ? entries[0]?.id : undefined;

type Found = Taken | null;

const known = (
  what: Taken["what"],
  value: string | null | undefined,
  from: Taken["from"],
): Found => (value === null || value === undefined ? null : { what, value, from });

/** The only culture there is. */
export const takenCulture = ({ cultures }: Kitchen): Found =>
  known("culture", only(cultures), null);

/**
 * Fills in a set-up: the appliance of the culture's last batch, and setting and
 * container of its last batch in that appliance; else the only one there is.
 */
export const takenSetUp = (kitchen: Kitchen, culture: string, said: SaidSetUp): FilledSetUp => {
  const { appliances, containers, batches, shownUnit } = kitchen;
  const own = batches.filter((batch) => batch.culture === culture);
  const last = newest(own);
  const appliance =
    said.appliance === undefined
      ? (known("appliance", last?.appliance, last) ?? known("appliance", only(appliances), null))
      : null;
  const id = said.appliance ?? appliance?.value;
  const there = newest(own.filter((batch) => batch.appliance === id));
  const setting =
    said.setting === undefined && there !== null
      ? known("setting", typedSetting(there.setting, shownUnit), there)
      : null;
  const container =
    said.container === undefined
      ? (known("container", there?.container, there) ?? known("container", only(containers), null))
      : null;
  const taken = [appliance, setting, container].filter((one) => one !== null);
  return {
    setUp: { ...said, ...Object.fromEntries(taken.map(({ what, value }) => [what, value])) },
    taken,
  };
};
