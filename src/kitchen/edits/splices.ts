/**
 * A change as cuts in the text, so that every line it does not touch stays as
 * it is, byte for byte. null where the text is written in a form in which that
 * is not possible.
 */
import { isScalar } from "yaml";
import type { KitchenSource } from "../text/kitchen-source.ts";
import type { AnyNode } from "../text/plain-data.ts";
import { added } from "./additions.ts";
import type { Change } from "./change.ts";
import * as places from "./places.ts";
import type { Splice } from "./splice.ts";
import { blockText, blockValue, flowItem, flowKey } from "./written-entry.ts";
import type { EntryValue } from "./written-entry.ts";

/** End of a key's colon; -1 where it does not follow at once. */
const colonEnd = (text: string, offset: number): number => {
  const colon = /^ *:/.exec(text.slice(offset, offset + 50))?.[0];
  return colon === undefined ? -1 : offset + colon.length;
};

/** A value on one line for another takes no more than its own place. */
const changedScalar = (place: places.Place, value: EntryValue): Splice | null => {
  const { node, parent } = place;
  const end = places.endOfNode(node);
  const onOneLine = isScalar(node) && node.type !== "BLOCK_LITERAL" && node.type !== "BLOCK_FOLDED";
  if (!onOneLine || node === null || end === -1) return null;
  if (typeof value === "object" && value !== null) return null;
  const flow = places.isFlow(parent as AnyNode);
  return { start: node.range[0], end, text: flow ? flowItem(value) : blockValue(value, 0, "") };
};

const changedValue = (
  { text }: KitchenSource,
  place: places.Place,
  value: EntryValue,
): Splice | null => {
  const scalar = changedScalar(place, value);
  if (scalar !== null) return scalar;
  const { parent, pair, node } = place;
  const [first, end] = [pair?.key ?? node, places.endOfNode(node)];
  // From the end of the key's colon, or from the item itself, to the end of what was there.
  const start = pair === null ? node?.range[0] : colonEnd(text, pair.key.range[1]);
  if (first === null || start === undefined || start === -1) return null;
  const [from, to] = [start, Math.max(end, start)];
  const space = pair === null ? "" : " ";
  if (places.isFlow(parent as AnyNode)) {
    return { start: from, end: to, text: `${space}${flowItem(value)}` };
  }
  const column = places.columnOf(text, first.range[0]);
  const lineEnd = places.lineEndOf(text);
  const written =
    pair === null ? blockText(value, column, lineEnd) : blockValue(value, column, lineEnd);
  const gap = written.startsWith("\n") || written.startsWith("\r") ? "" : space;
  return { start: from, end: to, text: `${gap}${written}` };
};

const removedFromFlow = (place: places.Place): Splice | null => {
  const items = places.itemsOf(place.parent);
  const startOf = (index: number): number => {
    const item = items[index] ?? null;
    const node = item !== null && "key" in item ? item.key : item;
    return node?.range[0] ?? -1;
  };
  const endOf = (index: number): number => places.endOfItem(place.parent, items[index] ?? null);
  const { index } = place;
  if (index > 0) return { start: endOf(index - 1), end: endOf(index), text: "" };
  const next = items.length > 1 ? startOf(1) : endOf(0);
  return { start: startOf(0), end: next, text: "" };
};

const removed = ({ text }: KitchenSource, place: places.Place): Splice | null => {
  const { parent, pair, node } = place;
  if (places.isFlow(parent as AnyNode)) return removedFromFlow(place);
  const from = pair === null ? node?.range[0] : pair.key.range[0];
  const end = places.endOfItem(parent, pair ?? node);
  if (from === undefined || end === -1) return null;
  const start = places.lineStart(text, from);
  const before = text.slice(start, from);
  if (!(pair === null ? /^ *- +$/ : /^ *$/).test(before)) return null;
  const column = pair === null ? before.indexOf("-") : before.length;
  const after = places.afterComments(text, places.nextLine(text, end), column);
  return { start, end: after, text: "" };
};

/** The cuts one change needs; null where it cannot be made in this text. */
export const splicesOf = (source: KitchenSource, change: Change): readonly Splice[] | null => {
  if (change.kind === "add key") return added(source, change.path, change);
  if (change.kind === "add item") {
    return added(source, change.path, { key: null, value: change.value });
  }
  const place = places.placeAt(source, change.path);
  if (place === null) return null;
  if (change.kind === "key") {
    if (place.pair === null) return null;
    const [start, end] = place.pair.key.range;
    return [{ start, end, text: flowKey(change.to) }];
  }
  const splice =
    change.kind === "value" ? changedValue(source, place, change.value) : removed(source, place);
  return splice === null ? null : [splice];
};
