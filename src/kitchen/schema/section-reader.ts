/** Reads the entries of a section one by one, so that a mistake in one hides none in another. */
import type * as z from "zod";
import { foundInWords, printable } from "../fault.ts";
import type { DataPath, Mistake } from "../fault.ts";
import { emptyMap, entriesOf, isPlainMap } from "../text/plain-data.ts";
import type { PlainData, PlainMap } from "../text/plain-data.ts";
import { mistakesOf } from "./mistakes.ts";
import { nameWanted } from "./wanted.ts";
import { readName } from "./written-names.ts";

/** One entry that could be read, with its path and what was written. */
export interface ReadEntry<Value> {
  readonly path: DataPath;
  readonly id: string;
  readonly value: Value;
  readonly written: PlainData;
}

export interface SectionReader {
  readonly mistakes: Mistake[];
  readonly one: <Schema extends z.ZodType>(
    schema: Schema,
    data: PlainData,
    path: DataPath,
  ) => z.output<Schema> | null;
  /** Entries of a group under their ids. */
  readonly named: <Schema extends z.ZodType>(
    data: PlainMap,
    section: string,
    schema: Schema,
  ) => readonly ReadEntry<z.output<Schema>>[];
  /** Entries of a list; their id is "". */
  readonly listed: <Schema extends z.ZodType>(
    data: PlainMap,
    section: string,
    schema: Schema,
  ) => readonly ReadEntry<z.output<Schema>>[];
}

const wrong = (path: DataPath, expected: string, found: string, example: string): Mistake => ({
  path,
  at: "value",
  expected,
  found,
  example,
  suggestion: "",
});

/** An id may be any name; only as it stands, or nothing could refer to it. */
const questionId = (id: string, path: DataPath): readonly Mistake[] =>
  readName(id) === id
    ? []
    : [{ ...wrong(path, nameWanted.expected, `"${printable(id)}"`, ""), at: "key" }];

export const sectionReader = (): SectionReader => {
  const mistakes: Mistake[] = [];

  const one: SectionReader["one"] = (schema, data, path) => {
    // A name with nothing under it is an entry of which nothing is said yet.
    const result = schema.safeParse(data ?? emptyMap());
    if (result.success) return result.data;
    mistakes.push(...mistakesOf(result.error, data, path));
    return null;
  };

  const read = <Schema extends z.ZodType>(
    schema: Schema,
    written: PlainData,
    path: DataPath,
    id: string,
  ): readonly ReadEntry<z.output<Schema>>[] => {
    const value = one(schema, written, path);
    return value === null ? [] : [{ path, id, value, written }];
  };

  const named: SectionReader["named"] = (data, section, schema) => {
    const entries = data[section] ?? null;
    if (entries === null) return [];
    if (!isPlainMap(entries)) {
      const expected = "entries, each indented under a name of yours";
      mistakes.push(wrong([section], expected, foundInWords(entries), ""));
      return [];
    }
    return entriesOf(entries).flatMap(([id, written]) => {
      mistakes.push(...questionId(id, [section, id]));
      return read(schema, written, [section, id], id);
    });
  };

  const listed: SectionReader["listed"] = (data, section, schema) => {
    const entries = data[section] ?? null;
    if (entries === null) return [];
    if (!Array.isArray(entries)) {
      const expected = 'a list, each entry on its own line after "- "';
      mistakes.push(wrong([section], expected, foundInWords(entries), ""));
      return [];
    }
    return (entries as readonly PlainData[]).flatMap((written, index) =>
      read(schema, written, [section, index], ""),
    );
  };

  return { mistakes, one, named, listed };
};
