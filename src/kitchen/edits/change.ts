/**
 * One change of a kitchen file, as it is asked for and as it changes the data.
 * How it changes the text is in splices.ts; the two are checked against each
 * other after every edit.
 */
import type { DataPath } from "../fault.ts";
import { emptyMap, isPlainMap } from "../text/plain-data.ts";
import type { PlainData, PlainMap } from "../text/plain-data.ts";
import { dataOf } from "./written-entry.ts";
import type { EntryValue } from "./written-entry.ts";

export type Change =
  /** A new key in a map, which need not be there yet. */
  | {
      readonly kind: "add key";
      readonly path: DataPath;
      readonly key: string;
      readonly value: EntryValue;
    }
  /** A new item at the end of a list, which need not be there yet. */
  | { readonly kind: "add item"; readonly path: DataPath; readonly value: EntryValue }
  /** Another value for a key or an item that is there. */
  | { readonly kind: "value"; readonly path: DataPath; readonly value: EntryValue }
  /** Another key for a value. */
  | { readonly kind: "key"; readonly path: DataPath; readonly to: string }
  | { readonly kind: "remove"; readonly path: DataPath };

type Update = (data: PlainData) => PlainData;

const atKey = (data: PlainMap, key: string, update: Update): PlainMap =>
  Object.assign(emptyMap(), data, { [key]: update(data[key] ?? null) });

/** Data with the value at a path updated; maps that are missing on the way appear. */
const updated = (data: PlainData, path: DataPath, update: Update): PlainData => {
  const [part, ...rest] = path;
  if (part === undefined) return update(data);
  if (Array.isArray(data)) {
    return (data as readonly PlainData[]).map((item, index) =>
      index === part ? updated(item, rest, update) : item,
    );
  }
  return atKey(isPlainMap(data) ? data : emptyMap(), String(part), (one) =>
    updated(one, rest, update),
  );
};

const without = (data: PlainData, part: string | number | undefined): PlainData => {
  if (Array.isArray(data)) {
    const left = (data as readonly PlainData[]).filter((_, index) => index !== part);
    return left.length === 0 ? null : left;
  }
  const left = Object.entries(isPlainMap(data) ? data : {}).filter(([key]) => key !== part);
  return left.length === 0 ? null : Object.assign(emptyMap(), Object.fromEntries(left));
};

const renamedKey = (data: PlainData, from: string | number | undefined, to: string): PlainData => {
  const entries = Object.entries(isPlainMap(data) ? data : {});
  const named = entries.map(([key, value]) => [key === from ? to : key, value]);
  return Object.assign(emptyMap(), Object.fromEntries(named));
};

const listed = (data: PlainData): readonly PlainData[] =>
  Array.isArray(data) ? (data as readonly PlainData[]) : [];

/** What the data is to be after the change. */
export const changedData = (data: PlainMap, change: Change): PlainMap => {
  const { path } = change;
  const last = path.at(-1);
  const above = path.slice(0, -1);
  const one = (): PlainData => {
    if (change.kind === "add key") {
      return updated(data, [...path, change.key], () => dataOf(change.value));
    }
    if (change.kind === "add item") {
      return updated(data, path, (list) => [...listed(list), dataOf(change.value)]);
    }
    if (change.kind === "value") return updated(data, path, () => dataOf(change.value));
    if (change.kind === "key") {
      return updated(data, above, (map) => renamedKey(map, last, change.to));
    }
    return updated(data, above, (from) => without(from, last));
  };
  const result = one();
  return isPlainMap(result) ? result : emptyMap();
};
