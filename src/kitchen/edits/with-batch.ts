/** The log of batches in kitchen.yaml: a list, so a batch goes by its number from 1. */
import { failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import type { PlainData } from "../text/plain-data.ts";
import { edited, openForEditing } from "./edit.ts";
import type { Editing, Step } from "./edit.ts";
import type { BatchEntry } from "./entries.ts";
import { fieldSteps } from "./entry-edit.ts";
import type { Fields } from "./entry-edit.ts";

/** Adds a batch after the others; it takes the next number. */
export const withBatch = (text: string, file: string, entry: BatchEntry): Outcome<string> => {
  const opened = openForEditing(text, file);
  if (!opened.ok) return opened;
  const path = ["batches", opened.value.kitchen.batches.length];
  const value = entry as Fields;
  return edited(opened.value, path, [[{ kind: "add item", path: ["batches"], value }]]);
};

const notLogged = ({ file, kitchen: { batches } }: Editing, number: number) => {
  const known = batches.length > 1 ? `1 to ${batches.length}` : batches.length === 1 ? "1" : "";
  return failed("id-unknown", { file, what: "a batch", id: String(number), suggestion: "", known });
};

type StepsOf = (editing: Editing, path: readonly ["batches", number]) => readonly Step[];

const atNumber = (
  text: string,
  file: string,
  number: number,
  stepsOf: StepsOf,
): Outcome<string> => {
  const opened = openForEditing(text, file);
  if (!opened.ok) return opened;
  const editing = opened.value;
  const path = ["batches", number - 1] as const;
  if (editing.kitchen.batches[path[1]] === undefined) return notLogged(editing, number);
  return edited(editing, path, stepsOf(editing, path));
};

/** The fields given take the place of the batch's own, null takes one away, the rest stays. */
export const changedBatch = (
  text: string,
  file: string,
  number: number,
  entry: BatchEntry,
): Outcome<string> =>
  atNumber(text, file, number, (editing, path) => {
    const list = editing.source.data["batches"] as readonly PlainData[];
    return fieldSteps(editing, path, list[path[1]] ?? null, entry as Fields);
  });

/** Takes a batch out, with the comments inside it; those after it move up by one number. */
export const withoutBatch = (text: string, file: string, number: number): Outcome<string> =>
  atNumber(text, file, number, (_, path) => [[{ kind: "remove", path }]]);
