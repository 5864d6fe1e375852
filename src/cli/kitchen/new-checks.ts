/** Checks of a thermometer from what was typed. */
import type { BoilingPlace, ThermometerCheck } from "../../thermometer/thermometer.ts";
import type { ThermometerOptions } from "./thermometer-options.ts";

const celsius = (typed: readonly { readonly celsius: number }[]): readonly number[] =>
  typed.map((one) => one.celsius);

const placeOf = (
  { altitude, pressure, pressureAt }: ThermometerOptions,
  kitchenAltitude: number | null,
): BoilingPlace => ({
  altitude: altitude ?? kitchenAltitude,
  pressure:
    pressure === undefined || pressureAt === undefined
      ? null
      : { hectopascal: pressure, reduced: pressureAt },
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
    const truthUncertainty = referenceUncertainty ?? null;
    const readings = celsius(reads);
    checks.push({ kind: "reference", readings, truth, truthUncertainty, ...facts });
  }
  return checks;
};
