/** A thermometer as written, read into data. */
import * as z from "zod";
import type { ThermometerCheck } from "../../thermometer/thermometer.ts";
import type { KitchenThermometer } from "../kitchen.ts";
import { complain, group, listOf, optional, required } from "./leaf.ts";
import * as wanted from "./wanted.ts";
import { readName } from "./written-names.ts";
import * as written from "./written-values.ts";

const kinds = ["ice", "boiling", "reference"] as const;
const readings = listOf(required(wanted.readingWanted, written.readReading));

/** Keys that belong to one kind of check only. */
const belongs = {
  altitude: "boiling",
  pressure: "boiling",
  uncertainty: "reference",
  readings: "reference",
} as const;

const checkGroup = group({
  ice: readings,
  boiling: readings,
  reference: optional(wanted.readingWanted, written.readReading),
  uncertainty: optional(wanted.uncertaintyWanted, written.readUncertainty),
  readings,
  date: optional(wanted.dateWanted, written.readDate),
  altitude: optional(wanted.altitudeWanted, written.readAltitude),
  pressure: optional(wanted.pressureWanted, written.readPressure),
  confirmed: optional(wanted.yesNoWanted, written.readYesNo),
});
type CheckGroup = z.output<typeof checkGroup>;

const given = (value: unknown): boolean =>
  Array.isArray(value) ? value.length > 0 : value !== null;

const questionKinds = (check: CheckGroup, context: z.RefinementCtx): boolean => {
  const said = kinds.filter((kind) => given(check[kind]));
  if (said.length === 1) return true;
  complain(context, [], {
    expected: "one of ice, boiling and reference, with its readings",
    found: said.length === 0 ? "none of them" : said.join(" and "),
    example: "- ice: [0.3, 0.2]",
  });
  return false;
};

const questionKeys = (check: CheckGroup, context: z.RefinementCtx): void => {
  for (const [key, kind] of Object.entries(belongs)) {
    if (!given(check[key as keyof typeof belongs]) || given(check[kind])) continue;
    complain(context, [key], {
      expected: `${key} only with ${kind}`,
      found: "it with another check",
      example: "",
    });
  }
  if (!given(check.reference) || given(check.readings)) return;
  complain(context, ["readings"], {
    expected: "what your thermometer showed beside the reference",
    example: "readings: [40.4, 40.3]",
  });
};

const asCheck = (check: CheckGroup): ThermometerCheck => {
  const facts = { date: check.date, confirmed: check.confirmed ?? false };
  const { altitude, pressure } = check;
  if (given(check.ice)) return { kind: "ice", readings: check.ice, ...facts };
  if (given(check.boiling)) {
    return { kind: "boiling", readings: check.boiling, place: { altitude, pressure }, ...facts };
  }
  const [truth, truthUncertainty] = [check.reference ?? 0, check.uncertainty];
  return { kind: "reference", truth, truthUncertainty, readings: check.readings, ...facts };
};

const check = checkGroup
  .superRefine((one, context) => {
    if (questionKinds(one, context)) questionKeys(one, context);
  })
  .transform(asCheck);

/** A thermometer without its id. */
export const thermometerSchema = group({
  name: optional(wanted.nameWanted, readName),
  resolution: optional(wanted.stepWanted, written.readStep),
  accuracy: optional(wanted.accuracyWanted, written.readStep),
  checks: listOf(check),
});

/** Boiling water stands at the kitchen's height unless its check says another. */
const atKitchen = (one: ThermometerCheck, altitude: number | null): ThermometerCheck =>
  one.kind === "boiling"
    ? { ...one, place: { ...one.place, altitude: one.place.altitude ?? altitude } }
    : one;

export const asThermometer = (
  id: string,
  entry: z.output<typeof thermometerSchema>,
  altitude: number | null,
): KitchenThermometer => ({
  ...entry,
  id,
  name: entry.name ?? id,
  checks: entry.checks.map((one) => atKitchen(one, altitude)),
});
