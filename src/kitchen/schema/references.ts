/**
 * Names by which water tests and batches speak of other parts of the kitchen.
 * Looked for in the data as written, so that a mistake elsewhere in an entry
 * does not hide them.
 */
import type { DataPath } from "../fault.ts";
import { entriesOf, isPlainMap } from "../text/plain-data.ts";
import type { PlainData, PlainMap } from "../text/plain-data.ts";

export type Section = "thermometers" | "appliances" | "containers" | "cultures" | "tests";
/** Sections that others refer to. */
export type NamedSection = Exclude<Section, "tests">;

export interface Reference {
  readonly to: NamedSection;
  readonly id: string;
  /** Where the name stands. */
  readonly path: DataPath;
}

/** What one thing of a section is called. */
export const thingOf: { readonly [S in Section]: string } = {
  thermometers: "a thermometer",
  appliances: "an appliance",
  containers: "a container",
  cultures: "a culture",
  tests: "a water test",
};

/** The group under a key; an empty one where there is none or something else. */
export const mapAt = (data: PlainMap, key: string): PlainMap => {
  const found = data[key];
  return isPlainMap(found) ? found : {};
};

const listAt = (data: PlainData | undefined, key: string): readonly PlainData[] => {
  const found = isPlainMap(data) ? (data[key] ?? null) : null;
  if (found === null) return [];
  return Array.isArray(found) ? (found as readonly PlainData[]) : [found];
};

const named = (entry: PlainData, keys: Readonly<Record<string, NamedSection>>, base: DataPath) =>
  Object.entries(keys).flatMap(([key, to]): Reference[] => {
    const id = isPlainMap(entry) ? entry[key] : undefined;
    return typeof id === "string" ? [{ to, id: id.trim(), path: [...base, key] }] : [];
  });

const ofProbes = (test: PlainData, base: DataPath): readonly Reference[] =>
  listAt(test, "files").flatMap((file, index) => {
    const path = [...base, "files", index, "probes"];
    const probes = isPlainMap(file) ? mapAt(file, "probes") : {};
    return entriesOf(probes).flatMap(([name, probe]) =>
      named(probe, { thermometer: "thermometers" }, [...path, name]),
    );
  });

/** All of them, water tests first. */
export const referencesIn = (data: PlainMap): readonly Reference[] => {
  const setUp = { appliance: "appliances", container: "containers" } as const;
  const inTests = entriesOf(mapAt(data, "tests")).flatMap(([id, test]) => {
    const path = ["tests", id];
    return named(test, setUp, path).concat(ofProbes(test, path));
  });
  const inBatches = listAt(data, "batches").flatMap((batch, index) =>
    named(batch, { ...setUp, culture: "cultures" }, ["batches", index]),
  );
  return [...inTests, ...inBatches];
};

/** Ids of a section's entries, in the file's order. */
export const idsIn = (data: PlainMap, section: Section): readonly string[] => {
  if (section !== "cultures") return entriesOf(mapAt(data, section)).map(([id]) => id);
  return listAt(data, "cultures").flatMap((item) => {
    const id = isPlainMap(item) ? item["id"] : item;
    return typeof id === "string" ? [id.trim()] : [];
  });
};
