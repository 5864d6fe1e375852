/** A kitchen's data as entries and as text: the way back from parseKitchen, for its tests. */
import { Document, Scalar } from "yaml";
import { cultures as catalogue } from "../../src/culture/catalogue.ts";
import type { Culture } from "../../src/culture/culture.ts";
import type {
  ApplianceEntry,
  BatchEntry,
  CheckEntry,
  ContainerEntry,
  CultureEntry,
  FileEntry,
  TestEntry,
  ThermometerEntry,
} from "../../src/kitchen/edits/entries.ts";
import type {
  Appliance,
  Batch,
  Container,
  Kitchen,
  KitchenThermometer,
  Setting,
  TestFile,
  WaterTest,
} from "../../src/kitchen/kitchen.ts";
import type { ThermometerCheck } from "../../src/thermometer/thermometer.ts";

/** Without the keys that hold null. */
const kept = <Entry extends object>(entry: Entry): { [K in keyof Entry]: NonNullable<Entry[K]> } =>
  Object.fromEntries(Object.entries(entry).filter(([, value]) => value !== null)) as never;

const rangeText = (range: { low: number; high: number } | null): string | null =>
  range === null ? null : `${range.low}..${range.high}`;

export const checkEntry = (check: ThermometerCheck): CheckEntry => {
  const facts = { date: check.date, confirmed: check.confirmed ? true : null };
  if (check.kind === "ice") return kept({ ice: check.readings, ...facts });
  if (check.kind === "reference") {
    const { truth: reference, truthUncertainty: uncertainty, readings } = check;
    return kept({ reference, uncertainty, readings, ...facts });
  }
  const { altitude, pressure } = check.place;
  const pressureText = pressure === null ? null : `${pressure.hectopascal} hPa ${pressure.reduced}`;
  return kept({ boiling: check.readings, altitude, pressure: pressureText, ...facts });
};

export const thermometerEntry = (one: KitchenThermometer): ThermometerEntry => ({
  name: one.name,
  resolution: one.resolution,
  accuracy: one.accuracy,
  checks: one.checks.map(checkEntry),
});

export const applianceEntry = (one: Appliance): ApplianceEntry => {
  const { name, kind, control, thermostat, movedOn: moved } = one;
  const entry = { name, kind, thermostat, moved };
  if (control.kind === "fixed") return { ...entry, control: "fixed" };
  if (control.kind === "programs") return { ...entry, programs: control.programs };
  if (control.kind === "marks") return { ...entry, marks: control.marks };
  return { ...entry, steps: `${control.low}..${control.high} by ${control.step}` };
};

export const containerEntry = ({
  name,
  stands,
  volume,
  count,
  changedOn: changed,
}: Container): ContainerEntry => ({ name, stands, volume, count, changed });

export const cultureEntry = (one: Culture): CultureEntry => {
  const base = catalogue.find(({ id }) => id === one.id);
  if (base !== undefined)
    return one.hours === base.hours && one.sources.hours.kind !== "own" ? {} : { hours: one.hours };
  const { name, low, high, target, ceiling, hours } = one;
  return { name, low, high, target, ceiling, hours };
};

export const settingEntry = (setting: Setting): string | number | null => {
  if (setting.kind === "fixed") return null;
  if (setting.kind === "program") return setting.program;
  return setting.kind === "mark" ? setting.mark : setting.celsius;
};

const clockText = (at: number | null): string | null =>
  at === null ? null : new Date(at).toISOString().slice(0, 19).replace("T", " ");

export const fileEntry = (file: TestFile): FileEntry => ({
  file: file.path,
  sha256: file.sha256,
  starts: clockText(file.startsAt),
  unit: file.unit === null ? null : file.unit === "degF" ? "F" : "C",
  "date-order": file.dateOrder,
  decimal: file.decimal === null ? null : file.decimal === "," ? "comma" : "point",
  interval: file.intervalSeconds,
  columns: file.columns,
  probes: Object.fromEntries(
    file.probes.map(({ name, place, thermometer }) => [name, { place, thermometer }]),
  ),
});

export const testEntry = (test: WaterTest): TestEntry => ({
  appliance: test.appliance,
  setting: settingEntry(test.setting),
  container: test.container,
  fill: test.fill,
  room: rangeText(test.room),
  notes: test.notes,
  files: test.files.map(fileEntry),
});

export const batchEntry = ({ setting, starter, ...batch }: Batch): BatchEntry => ({
  ...batch,
  setting: settingEntry(setting),
  // Hundredths of a percent, as the random kitchens have them.
  starter: starter === null ? null : `${Math.round(starter * 10_000) / 100} %`,
});

/** Nested, without nulls, yes and no as words; maps in their order. */
const plain = (value: unknown): unknown => {
  if (typeof value === "boolean") return value ? "yes" : "no";
  // The library's plain style does not read back for texts such as ":", line break, "a".
  if (typeof value === "string" && value.includes("\n")) {
    return Object.assign(new Scalar(value), { type: "QUOTE_DOUBLE" });
  }
  if (value instanceof Scalar) return value;
  if (Array.isArray(value)) return value.map(plain);
  if (typeof value !== "object" || value === null) return value;
  const entries = value instanceof Map ? [...value] : Object.entries(value);
  const said = entries.filter(([, one]) => one !== null && one !== undefined);
  return new Map(said.map(([key, one]) => [key, plain(one)]));
};

/** As testEntry; with a Map for the probes, which keeps names such as "38" in their order. */
const testData = (test: WaterTest): object => ({
  ...testEntry(test),
  files: test.files.map((file) => ({
    ...fileEntry(file),
    probes: new Map(file.probes.map(({ name, ...probe }) => [name, probe])),
  })),
});

const named = <Entry extends { readonly id: string }>(
  entries: readonly Entry[],
  written: (entry: Entry) => object,
): ReadonlyMap<string, object> => new Map(entries.map((one) => [one.id, written(one)]));

/** Everything in a kitchen as plain data, nested as in the file. */
export const kitchenData = (kitchen: Kitchen): unknown =>
  plain({
    holdband: 1,
    unit: kitchen.shownUnit === "degF" ? "F" : "C",
    altitude: kitchen.altitude,
    room: rangeText(kitchen.room),
    thermometers: named(kitchen.thermometers, thermometerEntry),
    appliances: named(kitchen.appliances, applianceEntry),
    containers: named(kitchen.containers, containerEntry),
    cultures: kitchen.cultures.map((one) => {
      const entry = cultureEntry(one);
      return Object.keys(entry).length === 0 ? one.id : { id: one.id, ...entry };
    }),
    tests: named(kitchen.tests, testData),
    batches: kitchen.batches.map(batchEntry),
  });

export interface Style {
  /** How texts are quoted where they need not be. */
  readonly quotes: "PLAIN" | "QUOTE_DOUBLE" | "QUOTE_SINGLE";
  readonly indent: number;
  readonly lists: "any" | "flow";
}

/** The kitchen as YAML, written by the library's own rules, not by ours. */
export const kitchenText = (kitchen: Kitchen, style: Partial<Style> = {}): string => {
  const document = new Document(kitchenData(kitchen), { aliasDuplicateObjects: false });
  return document.toString({
    lineWidth: 0,
    defaultStringType: style.quotes ?? "PLAIN",
    defaultKeyType: "PLAIN",
    indent: style.indent ?? 2,
    doubleQuotedAsJSON: true,
    blockQuote: false,
    collectionStyle: style.lists ?? "any",
  });
};
