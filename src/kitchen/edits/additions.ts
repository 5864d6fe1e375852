/**
 * Where a new key or item goes in the text, and how it is written there. null
 * where the text is written in a form that leaves no safe place for it.
 */
import { isMap, isSeq } from "yaml";
import type { YAMLMap, YAMLSeq } from "yaml";
import type { DataPath } from "../fault.ts";
import type { KitchenSource } from "../text/kitchen-source.ts";
import type { AnyNode } from "../text/plain-data.ts";
import type { Splice } from "./splice.ts";
import * as places from "./places.ts";
import { blockText, flowItem, flowKey } from "./written-entry.ts";
import type { EntryValue } from "./written-entry.ts";

/** What is added: a key with its value, or an item. */
export interface Addition {
  readonly key: string | null;
  readonly value: EntryValue;
}

const whole = ({ key, value }: Addition): EntryValue => (key === null ? [value] : { [key]: value });

/** Lines of an addition, with their indentation and line ends, set in at `offset`. */
const linesAt = (text: string, offset: number, column: number, addition: Addition): Splice => {
  const lineEnd = places.lineEndOf(text);
  const written = `${" ".repeat(column)}${blockText(whole(addition), column, lineEnd)}${lineEnd}`;
  const open = offset > 0 && text[offset - 1] !== "\n";
  return { start: offset, end: offset, text: open ? `${lineEnd}${written}` : written };
};

/** As it stands among others in brackets. */
const amongOthers = ({ key, value }: Addition): string =>
  key === null ? flowItem(value) : `${flowKey(key)}: ${flowItem(value)}`;

const intoFlow = (node: YAMLMap | YAMLSeq, addition: Addition): Splice | null => {
  const last = places.itemsOf(node).at(-1) ?? null;
  const end = last === null ? -1 : places.endOfItem(node, last);
  if (end === -1) return null;
  return { start: end, end, text: `, ${amongOthers(addition)}` };
};

/** Column of a block's entries: of their keys, or of the dashes before them. */
const entryColumn = (text: string, node: YAMLMap | YAMLSeq): number | null => {
  if (isMap(node)) {
    const key = (node.items[0]?.key ?? null) as AnyNode;
    return key === null ? null : places.columnOf(text, key.range[0]);
  }
  const item = (node.items[0] ?? null) as AnyNode;
  if (item === null) return null;
  const before = text.slice(places.lineStart(text, item.range[0]), item.range[0]);
  return /^ *- +$/.test(before) ? before.indexOf("-") : null;
};

/** Entries parted by empty lines get one before the new entry too. */
const spaced = (text: string, node: YAMLMap | YAMLSeq, splice: Splice): Splice => {
  if (node.items.length < 2) return splice;
  const last = node.items.at(-1) as unknown;
  const from = isMap(node) ? (last as { key: AnyNode }).key : (last as AnyNode);
  const above = places.lineStart(text, places.lineStart(text, from?.range[0] ?? 0) - 1);
  const blank = /^[ \t\r]*\n/.test(text.slice(above));
  return blank ? { ...splice, text: `${places.lineEndOf(text)}${splice.text}` } : splice;
};

/** A new section: after everything else, with an empty line before it. */
const atEnd = (text: string, column: number, addition: Addition): Splice => {
  const lineEnd = places.lineEndOf(text);
  const splice = linesAt(text, text.length, column, addition);
  const blank = /\n\r?\n$/.test(text) ? "" : lineEnd;
  const open = text.endsWith("\n") ? "" : lineEnd;
  return {
    ...splice,
    text: `${blank}${open === "" ? splice.text : `${open}${splice.text.slice(open.length)}`}`,
  };
};

const intoBlock = (
  text: string,
  node: YAMLMap | YAMLSeq,
  addition: Addition,
  isRoot: boolean,
): Splice | null => {
  const column = entryColumn(text, node);
  const end = places.endOfNode(node as AnyNode);
  if (column === null || end === -1) return null;
  if (isRoot) return atEnd(text, column, addition);
  const offset = places.afterComments(text, places.nextLine(text, end), column);
  return spaced(text, node, linesAt(text, offset, column, addition));
};

/** Under a key that stands there with nothing, or with empty brackets, behind it. */
const underKey = (
  text: string,
  place: places.Place,
  addition: Addition,
): readonly Splice[] | null => {
  const { parent, pair, node } = place;
  if (pair === null) return null;
  const end = places.endOfNode(node);
  if (places.isFlow(parent as AnyNode)) {
    if (end === -1 || node === null) return null;
    return [{ start: node.range[0], end, text: flowItem(whole(addition)) }];
  }
  const column = places.columnOf(text, pair.key.range[0]);
  const after = places.nextLine(text, end === -1 ? pair.key.range[1] : end);
  const offset = places.afterComments(text, after, column);
  const lines = linesAt(text, offset, column + 2, addition);
  if (end === -1 || node === null) return [lines];
  const gap = /[ ]*$/.exec(text.slice(0, node.range[0]))?.[0].length ?? 0;
  return [{ start: node.range[0] - gap, end, text: "" }, lines];
};

/** The cuts that add something at a path; what is missing on the way is added too. */
export const added = (
  source: KitchenSource,
  path: DataPath,
  addition: Addition,
): readonly Splice[] | null => {
  const { text, root } = source;
  const place = places.placeAt(source, path);
  const node: AnyNode = path.length === 0 ? root : (place?.node ?? null);
  if (path.length > 0 && place === null) {
    const key = path.at(-1);
    if (typeof key !== "string") return null;
    return added(source, path.slice(0, -1), { key, value: whole(addition) });
  }
  if (place !== null && places.isEmpty(node)) return underKey(text, place, addition);
  const fits = addition.key === null ? isSeq(node) : isMap(node);
  if (!fits) return null;
  const collection = node as unknown as YAMLMap | YAMLSeq;
  const splice = places.isFlow(node)
    ? intoFlow(collection, addition)
    : intoBlock(text, collection, addition, path.length === 0);
  return splice === null ? null : [splice];
};
