/** Checks of a thermometer from what was typed. */
import type { CheckEntry } from "../../kitchen/edits/entries.ts";
import type { BoilingPlace, ThermometerCheck } from "../../thermometer/thermometer.ts";
import { plainNumber } from "../plain-number.ts";
import type { ThermometerOptions } from "./thermometer-options.ts";

const celsius = (typed: readonly { readonly celsius: number }[]): readonly number[] =>
  typed.map((one) => one.celsius);

const placeOf = (
  { altitude, pressure, pressureAt }: ThermometerOptions,
  kitchenAltitude: number | null,
): BoilingPlace => ({
  altitude: altitude?.metres ?? kitchenAltitude,
  pressure:
    pressure === undefined || pressureAt === undefined
      ? null
      : { hectopascal: pressure.hectopascal, reduced: pressureAt },
});

/** In the order ice, boiling, reference; none where nothing was measured. */
export const newChecks = (
  options: ThermometerOptions,
  kitchenAltitude: number | null,
  today: string,
): readonly ThermometerCheck[] => {
  const { ice, boiling, reference, reads, referenceUncertainty } = options;
  const facts = { date: options.date ?? today, confirmed: options.confirm };
  const checks: ThermometerCheck[] = [];
  if (ice.length > 0) checks.push({ kind: "ice", readings: celsius(ice), ...facts });
  if (boiling.length > 0) {
    const place = placeOf(options, kitchenAltitude);
    checks.push({ kind: "boiling", readings: celsius(boiling), place, ...facts });
  }
  if (reference !== undefined) {
    const truth = reference.celsius;
    const truthUncertainty = referenceUncertainty?.celsius ?? null;
    const readings = celsius(reads);
    checks.push({ kind: "reference", readings, truth, truthUncertainty, ...facts });
  }
  return checks;
};

const written = (typed: readonly { readonly written: string }[]): readonly (number | string)[] =>
  typed.map((one) => plainNumber(one.written));

/** The same checks as kitchen.yaml has them: in the words and units they were typed in. */
export const checkEntries = (options: ThermometerOptions, today: string): readonly CheckEntry[] => {
  const { ice, boiling, altitude, pressure, reference, reads, referenceUncertainty } = options;
  const facts = {
    date: options.date ?? today,
    ...(options.confirm ? { confirmed: true } : {}),
  };
  const entries: CheckEntry[] = [];
  if (ice.length > 0) entries.push({ ice: written(ice), ...facts });
  if (boiling.length > 0) {
    const height = altitude === undefined ? {} : { altitude: altitude.written };
    const air =
      pressure === undefined ? {} : { pressure: `${pressure.written} ${options.pressureAt}` };
    entries.push({ boiling: written(boiling), ...facts, ...height, ...air });
  }
  if (reference !== undefined) {
    const uncertainty =
      referenceUncertainty === undefined
        ? {}
        : { uncertainty: plainNumber(referenceUncertainty.written) };
    entries.push({
      reference: plainNumber(reference.written),
      ...uncertainty,
      readings: written(reads),
      ...facts,
    });
  }
  return entries;
};
