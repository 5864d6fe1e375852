/** The whole kitchen: data as written to data as meant, or every mistake in it. */
import type * as z from "zod";
import type { Culture } from "../../culture/culture.ts";
import type { Mistake } from "../fault.ts";
import type { Appliance, Batch, Kitchen, WaterTest } from "../kitchen.ts";
import { isSetting, readSetting } from "../setting.ts";
import { emptyMap, entriesOf } from "../text/plain-data.ts";
import type { PlainMap } from "../text/plain-data.ts";
import { applianceSchema, asAppliance } from "./appliance-schema.ts";
import { asBatch, batchSchema } from "./batch-schema.ts";
import { asContainer, containerSchema } from "./container-schema.ts";
import { cultureSchema } from "./culture-schema.ts";
import { group, optional, required } from "./leaf.ts";
import { unknownKey } from "./mistakes.ts";
import { questionReferences, questionSetting } from "./question-references.ts";
import { sectionReader } from "./section-reader.ts";
import type { ReadEntry, SectionReader } from "./section-reader.ts";
import { testSchema } from "./test-schema.ts";
import { asThermometer, thermometerSchema } from "./thermometer-schema.ts";
import { altitudeWanted, roomWanted, unitWanted } from "./wanted.ts";
import { readAltitude, readRoom, readUnit } from "./written-values.ts";

/** Version of the form this program reads and writes. */
export const formVersion = 1;

const versionWanted = {
  expected: `version ${formVersion} of this form (a newer one needs a newer holdband)`,
  example: `holdband: ${formVersion}`,
};

const head = {
  holdband: required(versionWanted, (text) => (text === String(formVersion) ? formVersion : null)),
  unit: optional(unitWanted, readUnit),
  altitude: optional(altitudeWanted, readAltitude),
  room: optional(roomWanted, readRoom),
};
const headSchema = group(head);

/** The sections in the order in which a new file has them. */
export const sections = [
  "thermometers",
  "appliances",
  "containers",
  "cultures",
  "tests",
  "batches",
] as const;

const known: readonly string[] = [...Object.keys(head), ...sections];

const headOf = (data: PlainMap): PlainMap => {
  const result = emptyMap();
  for (const key of Object.keys(head)) if (key in data) result[key] = data[key] ?? null;
  return result;
};

const readCultures = (data: PlainMap, reader: SectionReader): readonly Culture[] => {
  const seen = new Set<string>();
  return reader.listed(data, "cultures", cultureSchema).flatMap(({ value, path }) => {
    if (!seen.has(value.id)) {
      seen.add(value.id);
      return [value];
    }
    reader.mistakes.push({
      path,
      at: "value",
      expected: "each culture once",
      found: `"${value.id}" a second time`,
      example: "",
      suggestion: "",
    });
    return [];
  });
};

/** Puts the setting in; a setting the control does not have is a mistake. */
const withSetting = <Entry extends { readonly appliance: string; readonly setting: string | null }>(
  { value, written, path }: ReadEntry<Entry>,
  appliances: ReadonlyMap<string, Appliance>,
  mistakes: Mistake[],
) => {
  const appliance = appliances.get(value.appliance);
  // An unknown appliance is a mistake of its own, found by its name.
  if (appliance === undefined) return [];
  const setting = readSetting(appliance.control, value.setting);
  if (isSetting(setting)) return [{ ...value, setting }];
  const mistake = questionSetting(appliance, written, path);
  if (mistake !== null) mistakes.push(mistake);
  return [];
};

type TestGroup = z.output<typeof testSchema>;

const readTests = (
  data: PlainMap,
  reader: SectionReader,
  appliances: ReadonlyMap<string, Appliance>,
): readonly WaterTest[] =>
  reader
    .named(data, "tests", testSchema)
    .flatMap((entry: ReadEntry<TestGroup>) =>
      withSetting(entry, appliances, reader.mistakes).map((test) =>
        Object.assign(test, { id: entry.id }),
      ),
    );

const readBatches = (
  data: PlainMap,
  reader: SectionReader,
  appliances: ReadonlyMap<string, Appliance>,
): readonly Batch[] =>
  reader
    .listed(data, "batches", batchSchema)
    .flatMap((entry) => withSetting(entry, appliances, reader.mistakes).map(asBatch));

/** With mistyped sections under their right names, so that one slip is not reported for every name in it. */
const asProbablyMeant = (data: PlainMap, strange: readonly Mistake[]): PlainMap => {
  const meant = Object.assign(emptyMap(), data);
  for (const { path, suggestion } of strange) {
    if (suggestion !== "") meant[suggestion] ??= data[String(path[0])] ?? null;
  }
  return meant;
};

export type KitchenReading =
  | { readonly ok: true; readonly kitchen: Kitchen }
  | { readonly ok: false; readonly mistakes: readonly Mistake[] };

/** Reads data as written. All mistakes come at once; none is repaired by guessing. */
export const readKitchen = (data: PlainMap): KitchenReading => {
  const reader = sectionReader();
  const { mistakes } = reader;
  const stray = entriesOf(data).filter(([key]) => !known.includes(key));
  const strange = stray.map(([key]) => unknownKey([key], known));
  mistakes.push(...strange);
  const first = reader.one(headSchema, headOf(data), []);
  const altitude = first?.altitude ?? null;
  const appliances = reader
    .named(data, "appliances", applianceSchema)
    .map(({ id, value }) => asAppliance(id, value));
  const byId = new Map(appliances.map((one) => [one.id, one]));
  const kitchen: Kitchen = {
    shownUnit: first?.unit ?? "degC",
    altitude,
    room: first?.room ?? null,
    thermometers: reader
      .named(data, "thermometers", thermometerSchema)
      .map(({ id, value }) => asThermometer(id, value, altitude)),
    appliances,
    containers: reader
      .named(data, "containers", containerSchema)
      .map(({ id, value }) => asContainer(id, value)),
    cultures: readCultures(data, reader),
    tests: readTests(data, reader, byId),
    batches: readBatches(data, reader, byId),
  };
  mistakes.push(...questionReferences(data, asProbablyMeant(data, strange)));
  return mistakes.length === 0 ? { ok: true, kitchen } : { ok: false, mistakes };
};
