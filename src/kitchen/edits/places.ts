/** Where things stand in a kitchen's text: nodes, lines, columns. Offsets count from its start. */
import { isCollection, isMap, isScalar, isSeq } from "yaml";
import type { ParsedNode, YAMLMap, YAMLSeq } from "yaml";
import type { DataPath } from "../fault.ts";
import type { KitchenSource } from "../text/kitchen-source.ts";
import { keyText } from "../text/plain-data.ts";
import type { AnyNode, AnyPair } from "../text/plain-data.ts";

/** What stands at a path: a pair of a map, or an item of a list. */
export interface Place {
  readonly parent: YAMLMap | YAMLSeq;
  /** null for an item of a list. */
  readonly pair: AnyPair | null;
  readonly node: AnyNode;
  readonly index: number;
}

export const itemsOf = (parent: YAMLMap | YAMLSeq): readonly (AnyPair | AnyNode)[] =>
  parent.items as (AnyPair | AnyNode)[];

const inside = (node: AnyNode, part: string | number): Place | null => {
  if (isMap(node)) {
    const pairs = node.items as AnyPair[];
    const index = pairs.findIndex((one) => keyText(one) === String(part));
    const pair = pairs[index];
    return pair === undefined ? null : { parent: node, pair, node: pair.value, index };
  }
  if (!isSeq(node) || typeof part !== "number" || part >= node.items.length) return null;
  return { parent: node, pair: null, node: node.items[part] as AnyNode, index: part };
};

export const placeAt = ({ root }: KitchenSource, path: DataPath): Place | null => {
  let place: Place | null = null;
  for (const part of path) {
    place = inside(place === null ? root : place.node, part);
    if (place === null) return null;
  }
  return place;
};

export const isFlow = (node: AnyNode): boolean => isCollection(node) && node.flow === true;

/** Nothing, or brackets with nothing in them: new entries take its place. */
export const isEmpty = (node: AnyNode): boolean => {
  if (node === null) return true;
  if (isCollection(node)) return node.items.length === 0;
  const plain = isScalar(node) && node.type === "PLAIN";
  return plain && /^(?:|~|null|Null|NULL)$/.test(String(node.value ?? ""));
};

const hasText = (node: AnyNode): node is ParsedNode =>
  node !== null && node.range[1] > node.range[0];

/** End of a value's own text, comments behind it not counted; -1 where it has none. */
export const endOfNode = (node: AnyNode): number => {
  if (!hasText(node)) return -1;
  if (!isCollection(node) || isFlow(node)) return node.range[1];
  const last = itemsOf(node as YAMLMap | YAMLSeq).at(-1) ?? null;
  return last === null ? node.range[1] : endOfItem(node as YAMLMap, last);
};

const isPair = (item: AnyPair | AnyNode): item is AnyPair => item !== null && "key" in item;

/** End of a pair or an item. Of a key with nothing behind it, the end of its colon. */
export const endOfItem = (parent: YAMLMap | YAMLSeq, item: AnyPair | AnyNode): number => {
  if (!isPair(item)) return endOfNode(item) === -1 ? (item?.range[0] ?? -1) : endOfNode(item);
  const end = endOfNode(item.value);
  if (end !== -1) return end;
  // The colon follows its key at once, but for a space or two.
  return isMap(parent) ? item.key.range[1] : -1;
};

export const lineStart = (text: string, offset: number): number =>
  text.lastIndexOf("\n", offset - 1) + 1;

/** Start of the line after the one in which `offset` stands; a block scalar ends there already. */
export const nextLine = (text: string, offset: number): number => {
  if (offset > 0 && text[offset - 1] === "\n") return offset;
  const end = text.indexOf("\n", offset);
  return end === -1 ? text.length : end + 1;
};

export const columnOf = (text: string, offset: number): number => offset - lineStart(text, offset);

/** Start of the first line, from `offset` on, that is not a comment indented deeper than `column`. */
export const afterComments = (text: string, offset: number, column: number): number => {
  let at = offset;
  for (;;) {
    const comment = /^( *)#[^\n]*(?:\n|$)/.exec(text.slice(at, nextLine(text, at + 1)));
    if (comment === null || (comment[1] ?? "").length <= column) return at;
    at += comment[0].length;
  }
};

/** The line ends the file uses already. */
export const lineEndOf = (text: string): string => (text.includes("\r\n") ? "\r\n" : "\n");
