/**
 * A parsed YAML document as plain data: texts exactly as written, lists, maps,
 * and null for what was left empty. Numbers stay texts, so that "38,5" and the
 * mark "1.0" reach their readers unchanged.
 */
import { isAlias, isMap, isScalar, isSeq } from "yaml";
import type { Pair, ParsedNode, Scalar, YAMLMap } from "yaml";
import type { DataPath, Mistake } from "../fault.ts";

export type PlainData = string | null | readonly PlainData[] | PlainMap;
/** Has no prototype, so that no key finds more than was written. */
export interface PlainMap {
  readonly [key: string]: PlainData;
}

export const isPlainMap = (value: PlainData | undefined): value is PlainMap =>
  typeof value === "object" && value !== null && !Array.isArray(value);

export type AnyNode = ParsedNode | null;
export type AnyPair = Pair<ParsedNode, AnyNode>;

export const emptyMap = (): Record<string, PlainData> =>
  Object.create(null) as Record<string, PlainData>;

const keysAsWritten = new WeakMap<PlainMap, readonly string[]>();

/** Keys and values in the order of the file; an object alone would put "2" before "b". */
export const entriesOf = (map: PlainMap): readonly (readonly [string, PlainData])[] =>
  (keysAsWritten.get(map) ?? Object.keys(map)).map((key) => [key, map[key] ?? null]);

export interface PlainReading {
  readonly data: PlainData;
  readonly mistakes: readonly Mistake[];
}

const emptyWords: ReadonlySet<string> = new Set(["", "~", "null", "Null", "NULL"]);

/** The key's text; keys are texts, which the parser was told to ask for. */
export const keyText = (pair: AnyPair): string =>
  isScalar(pair.key) ? String(pair.key.value ?? "") : "";

const textOf = (node: Scalar): PlainData => {
  const text = String(node.value ?? "");
  return node.type === "PLAIN" && emptyWords.has(text.trim()) ? null : text;
};

const noAlias = (path: DataPath): Mistake => ({
  path,
  at: "value",
  expected: "the value written out, in quotes where it begins with & or *",
  found: "an anchor or alias, which is not used here",
  example: "",
  suggestion: "",
});

const noTag = (path: DataPath, tag: string): Mistake => ({
  path,
  at: "value",
  expected: "the value alone, in quotes where it begins with !",
  found: `the tag ${tag}`,
  example: "",
  suggestion: "",
});

/** Walks a document once. Its depth must have been limited before. */
export const plainData = (root: AnyNode): PlainReading => {
  const mistakes: Mistake[] = [];

  const readMap = (map: YAMLMap, path: DataPath): PlainMap => {
    const result = emptyMap();
    const keys: string[] = [];
    keysAsWritten.set(result, keys);
    for (const pair of map.items as AnyPair[]) {
      const key = keyText(pair);
      if (key === "__proto__") {
        mistakes.push(badKey([...path, key], "a name of yours", '"__proto__"'));
      } else if (Object.hasOwn(result, key)) {
        mistakes.push(badKey([...path, key], "each key once", "it a second time"));
      } else {
        keys.push(key);
        result[key] = read(pair.value, [...path, key]);
      }
    }
    return result;
  };

  const read = (node: AnyNode, path: DataPath): PlainData => {
    if (node === null) return null;
    if (isAlias(node) || node.anchor !== undefined) {
      mistakes.push(noAlias(path));
      return null;
    }
    if (node.tag?.startsWith("!") === true) mistakes.push(noTag(path, node.tag));
    if (isMap(node)) return readMap(node, path);
    if (isSeq(node))
      return node.items.map((item, index) => read(item as AnyNode, [...path, index]));
    return textOf(node);
  };

  return { data: read(root, []), mistakes };
};

const badKey = (path: DataPath, expected: string, found: string): Mistake => ({
  path,
  at: "key",
  expected,
  found,
  example: "",
  suggestion: "",
});
