/** The text of a kitchen file, parsed: its data, and where in the text each part stands. */
import { isMap, isSeq, LineCounter, parseDocument } from "yaml";
import type { Document, ParsedNode, YAMLError, YAMLMap } from "yaml";
import type { Fault, Mistake } from "../fault.ts";
import { printable } from "../fault.ts";
import { isPlainMap, keyText, plainData } from "./plain-data.ts";
import type { AnyNode, AnyPair, PlainMap } from "./plain-data.ts";
import { syntaxWords } from "./syntax-words.ts";
import { textFault } from "./text-limits.ts";

export interface KitchenSource {
  /** Without the byte-order mark; every offset of a node is an offset into it. */
  readonly text: string;
  readonly root: ParsedNode;
  readonly data: PlainMap;
  /** Line, from 1, of the deepest part of the path that is there. */
  readonly lineOf: (place: Pick<Mistake, "path" | "at">) => number;
}

export type SourceReading =
  | { readonly ok: true; readonly source: KitchenSource }
  | { readonly ok: false; readonly faults: readonly Fault[] };

const refused = (faults: readonly Fault[]): SourceReading => ({ ok: false, faults });

const faultAt = (line: number, expected: string, found: string, example: string): Fault => ({
  line,
  path: [],
  at: "value",
  expected,
  found,
  example,
  suggestion: "",
});

const emptyFile = faultAt(1, "a kitchen", "an empty file", "holdband: 1 on the first line");
const notMap = faultAt(
  1,
  "a kitchen's sections",
  "something else",
  "holdband: 1 on the first line",
);

const withoutMark = (text: string): string => (text.startsWith("\uFEFF") ? text.slice(1) : text);

/** Of several complaints about one line only the first, and beside tabs none: the others follow from it. */
const syntaxFaults = (all: readonly YAMLError[], text: string, lines: LineCounter): Fault[] => {
  const tabs = all.filter(({ code }) => code === "TAB_AS_INDENT");
  const errors = tabs.length > 0 ? tabs : all;
  const byLine = new Map<number, Fault>();
  const written = text.split("\n");
  for (const error of errors) {
    const { line } = lines.linePos(Math.min(error.pos[0], text.length));
    if (byLine.has(line)) continue;
    const wrong = written[line - 1] ?? "";
    const { expected, example, found } = syntaxWords(error, wrong);
    const shown = printable(wrong);
    const said = shown === "" ? "the end of the file" : `"${shown}"`;
    byLine.set(line, faultAt(line, expected, found ?? said, example));
  }
  return [...byLine.values()];
};

interface Step {
  readonly key: AnyNode;
  readonly value: AnyNode;
}

const keysOf = (map: YAMLMap): ReadonlyMap<string, Step> =>
  new Map((map.items as AnyPair[]).map((pair) => [keyText(pair), pair]));

/** Steps through the document; each map's keys are looked through once only. */
const stepper = (): ((node: AnyNode, part: string | number) => Step | null) => {
  const known = new Map<AnyNode, ReadonlyMap<string, Step>>();
  return (node, part) => {
    if (isMap(node)) {
      const keys = known.get(node) ?? keysOf(node);
      known.set(node, keys);
      return keys.get(String(part)) ?? null;
    }
    if (!isSeq(node) || typeof part !== "number") return null;
    const item = node.items[part] as AnyNode | undefined;
    return item === undefined ? null : { key: item, value: item };
  };
};

const lineFinder = (root: ParsedNode, lines: LineCounter): KitchenSource["lineOf"] => {
  const step = stepper();
  return ({ path, at }) => {
    let [key, node]: [AnyNode, AnyNode] = [root, root];
    for (const part of path) {
      const next = step(node, part);
      if (next === null) break;
      [key, node] = [next.key, next.value];
    }
    // Of a group, and of what is missing in it, the line is that of its key.
    const scalar = node !== null && !isMap(node) && !isSeq(node);
    const shown = at === "value" && scalar ? node : key;
    return lines.linePos(shown?.range[0] ?? 0).line;
  };
};

/** Mistakes with their lines. */
export const located = (
  mistakes: readonly Mistake[],
  lineOf: KitchenSource["lineOf"],
): readonly Fault[] => mistakes.map((mistake) => Object.assign({ line: lineOf(mistake) }, mistake));

const readDocument = (text: string, parsed: Document.Parsed, lines: LineCounter): SourceReading => {
  const complaints = [...parsed.errors, ...parsed.warnings];
  if (complaints.length > 0) return refused(syntaxFaults(complaints, text, lines));
  const root = parsed.contents;
  if (root === null) return refused([emptyFile]);
  const lineOf = lineFinder(root, lines);
  const { data, mistakes } = plainData(root);
  if (mistakes.length > 0) return refused(located(mistakes, lineOf));
  if (data === null) return refused([emptyFile]);
  if (!isPlainMap(data)) return refused([notMap]);
  return { ok: true, source: { text, root, data, lineOf } };
};

/** Parses a kitchen's text: its data with places, or every fault of its form. Never throws. */
export const readSource = (given: string): SourceReading => {
  const text = withoutMark(given);
  if (text.trim() === "") return refused([emptyFile]);
  const fault = textFault(text);
  if (fault !== null) return refused([faultAt(fault.line, fault.expected, fault.found, "")]);
  const lines = new LineCounter();
  const parsed = parseDocument(text, {
    lineCounter: lines,
    prettyErrors: false,
    // Every value stays the text that was written; what it means is decided by its key.
    schema: "failsafe",
    stringKeys: true,
    uniqueKeys: false,
    // Not "silent": that would pass over a second document.
    logLevel: "error",
  });
  return readDocument(text, parsed, lines);
};
