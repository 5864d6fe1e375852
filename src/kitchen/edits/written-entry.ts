/** Entries as text: block style for groups, one line for lists of values and for probes. */
import { Document, isMap, isScalar, isSeq, Scalar, visit } from "yaml";
import { emptyMap, isPlainMap } from "../text/plain-data.ts";
import type { PlainData } from "../text/plain-data.ts";

/** What may stand in an entry. */
export type EntryValue =
  | string
  | number
  | boolean
  | null
  | undefined
  | readonly EntryValue[]
  | { readonly [key: string]: EntryValue };

const isGroup = (value: EntryValue): value is { readonly [key: string]: EntryValue } =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** The data that reading the entry's text must give. Keys with nothing in them are left out. */
export const dataOf = (value: EntryValue): PlainData => {
  if (value === null || value === undefined) return null;
  if (typeof value === "boolean") return value ? "yes" : "no";
  if (Array.isArray(value)) return (value as readonly EntryValue[]).map(dataOf);
  if (!isGroup(value)) return String(value);
  const result = emptyMap();
  for (const [key, one] of Object.entries(value)) {
    if (one !== null && one !== undefined) result[key] = dataOf(one);
  }
  return result;
};

/** A text of several lines always in quotes: without, some would not read back as they were. */
const severalLines = (text: string): Scalar => {
  const scalar = new Scalar(text);
  scalar.type = "QUOTE_DOUBLE";
  return scalar;
};

/** Numbers as numbers, so that they are not quoted; the rest as texts. */
const forWriting = (value: EntryValue): unknown => {
  if (typeof value === "boolean") return value ? "yes" : "no";
  if (typeof value === "string" && value.includes("\n")) return severalLines(value);
  if (Array.isArray(value)) return (value as readonly EntryValue[]).map(forWriting);
  if (!isGroup(value)) return value ?? null;
  const kept = Object.entries(value).filter(([, one]) => one !== null && one !== undefined);
  return new Map(kept.map(([key, one]) => [key, forWriting(one)]));
};

const style = {
  lineWidth: 0,
  blockQuote: false,
  doubleQuotedAsJSON: true,
  flowCollectionPadding: false,
} as const;

/** Lists of plain values, and each probe, take one line; the list of cultures grows and does not. */
const onOneLine = (yaml: Document): void => {
  const whole = new Set<unknown>([yaml.contents]);
  visit(yaml, {
    Seq: (_, node) => {
      if (!whole.has(node) && node.items.every((item) => isScalar(item))) node.flow = true;
    },
    Pair: (_, { key, value }) => {
      const name = isScalar(key) ? key.value : null;
      if (name === "cultures") whole.add(value);
      if (name !== "probes" || !isMap(value)) return;
      for (const { value: probe } of value.items) if (isMap(probe)) probe.flow = true;
    },
  });
};

/** The value in block style, its first line without indentation, the others with `column` spaces. */
export const blockText = (value: EntryValue, column: number, lineEnd: string): string => {
  const yaml = new Document(forWriting(value), { aliasDuplicateObjects: false });
  onOneLine(yaml);
  const lines = yaml.toString(style).trimEnd().split("\n");
  return lines.join(`${lineEnd}${" ".repeat(column)}`);
};

/** What stands behind a key's colon: the value itself, or from a new line on. */
export const blockValue = (value: EntryValue, column: number, lineEnd: string): string =>
  blockText({ k: value }, column, lineEnd).replace(/^k: ?/, "");

const flowText = (value: EntryValue): string => {
  const yaml = new Document(forWriting(value), { aliasDuplicateObjects: false });
  if (isMap(yaml.contents) || isSeq(yaml.contents)) yaml.contents.flow = true;
  return yaml.toString(style).trimEnd();
};

/** A value on one line, fit to stand among others in brackets. */
export const flowItem = (value: EntryValue): string =>
  flowText([value]).replace(/^\[ */, "").replace(/ *\]$/, "");

/** A key, fit to stand anywhere. */
export const flowKey = (key: string): string =>
  flowText({ [key]: 1 })
    .replace(/^\{ */, "")
    .replace(/: 1 *\}$/, "");

/** Keys sorted; an empty list or map is the same as nothing. */
const inOrder = (data: PlainData): unknown => {
  if (Array.isArray(data)) return data.length === 0 ? null : data.map(inOrder);
  if (!isPlainMap(data)) return data;
  const keys = Object.keys(data).toSorted();
  if (keys.length === 0) return null;
  return keys.map((key) => [key, inOrder(data[key] ?? null)]);
};

/** Whether two pieces of data say the same, the order of keys aside. */
export const sameData = (a: PlainData, b: PlainData): boolean =>
  JSON.stringify(inOrder(a)) === JSON.stringify(inOrder(b));
