/** Adding or changing one entry of a section whose entries stand under their names. */
import { done, failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import type { DataPath } from "../fault.ts";
import type { TestProbe } from "../kitchen.ts";
import { readKitchen } from "../schema/kitchen-schema.ts";
import { idsIn, thingOf } from "../schema/references.ts";
import type { Section } from "../schema/references.ts";
import { isPlainMap } from "../text/plain-data.ts";
import type { PlainData, PlainMap } from "../text/plain-data.ts";
import type { Change } from "./change.ts";
import { changedData } from "./change.ts";
import { edited, openForEditing } from "./edit.ts";
import type { Editing, Step } from "./edit.ts";
import type { EditOptions } from "./entries.ts";
import { placeAt } from "./places.ts";
import { dataOf, sameData } from "./written-entry.ts";
import type { EntryValue } from "./written-entry.ts";

export type Fields = { readonly [key: string]: EntryValue };

/** Probes are known by their names; their order says nothing. */
const byName = (key: string, value: unknown): unknown =>
  key === "probes"
    ? (value as readonly TestProbe[]).toSorted((a, b) => (a.name < b.name ? -1 : 1))
    : value;

const entryJson = (data: PlainMap, section: Section, id: string): string | null => {
  const read = readKitchen(data);
  if (!read.ok) return null;
  const entries: readonly { readonly id: string }[] = read.kitchen[section];
  return JSON.stringify(entries.find((one) => one.id === id) ?? null, byName);
};

/** Whether writing the value there would leave the entry as it is. */
export const saysTheSame = (
  { source: { data } }: Editing,
  section: Section,
  id: string,
  change: Change,
): boolean => entryJson(data, section, id) === entryJson(changedData(data, change), section, id);

export const taken = (editing: Editing, section: Section, id: string) =>
  failed("id-taken", { file: editing.file, what: thingOf[section], id });

const valueAt = (data: PlainData, key: string): PlainData =>
  isPlainMap(data) ? (data[key] ?? null) : null;

/** The steps that set the given fields of the entry at a path; what is the same already stays. */
export const fieldSteps = (
  editing: Editing,
  path: DataPath,
  entry: PlainData,
  fields: Fields,
): readonly Step[] =>
  Object.entries(fields).flatMap(([key, value]): Step[] => {
    const field = [...path, key];
    const there = placeAt(editing.source, field) !== null;
    if (value === undefined || (value === null && !there)) return [];
    if (value === null) return [[{ kind: "remove", path: field }]];
    if (!there) return [[{ kind: "add key", path, key, value }]];
    const same = sameData(valueAt(entry, key), dataOf(value));
    return same ? [] : [[{ kind: "value", path: field, value }]];
  });

/**
 * Puts an entry into a section. An id that is there already is refused unless
 * the entry says the same, or `replace` is asked for: then the fields given
 * take the place of its own, null takes a field away, and the rest stays.
 */
export const withEntry = (
  text: string,
  file: string,
  section: Exclude<Section, "cultures">,
  id: string,
  fields: Fields,
  options: EditOptions = {},
): Outcome<string> => {
  const opened = openForEditing(text, file);
  if (!opened.ok) return opened;
  const editing = opened.value;
  const path = [section, id];
  if (!idsIn(editing.source.data, section).includes(id)) {
    return edited(editing, path, [[{ kind: "add key", path: [section], key: id, value: fields }]]);
  }
  if (options.replace === true) {
    const entry = valueAt(editing.source.data[section] ?? null, id);
    return edited(editing, path, fieldSteps(editing, path, entry, fields));
  }
  const same = saysTheSame(editing, section, id, { kind: "value", path, value: fields });
  return same ? done(text) : taken(editing, section, id);
};
