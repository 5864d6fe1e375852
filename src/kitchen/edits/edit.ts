/**
 * Makes changes in a kitchen's text. Whatever comes out has been read again:
 * its data are what the change was to give and it is a valid kitchen, or
 * nothing is changed at all.
 */
import { done, failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import { faultList } from "../fault.ts";
import type { DataPath, Mistake } from "../fault.ts";
import type { Kitchen } from "../kitchen.ts";
import { parseWithSource } from "../parse-kitchen.ts";
import { readKitchen } from "../schema/kitchen-schema.ts";
import { readSource } from "../text/kitchen-source.ts";
import type { KitchenSource } from "../text/kitchen-source.ts";
import { changedData } from "./change.ts";
import type { Change } from "./change.ts";
import { placeAt } from "./places.ts";
import { spliced } from "./splice.ts";
import { splicesOf } from "./splices.ts";
import { sameData } from "./written-entry.ts";

/** A kitchen's text as it was before the edit. */
export interface Editing {
  readonly text: string;
  readonly file: string;
  readonly source: KitchenSource;
  readonly kitchen: Kitchen;
}

/** One step: changes that do not touch each other, made together. */
export type Step = readonly Change[];

const byHand = (file: string, [change]: Step) =>
  failed("kitchen-change-by-hand", { file, place: String(change?.path[0] ?? "the text") });

const stepMade = (source: KitchenSource, step: Step, file: string): Outcome<KitchenSource> => {
  const splices = step.map((change) => splicesOf(source, change));
  if (splices.includes(null)) return byHand(file, step);
  const made = spliced(
    source.text,
    splices.flatMap((one) => one ?? []),
  );
  const reading = readSource(made);
  const expected = step.reduce(changedData, source.data);
  if (!reading.ok || !sameData(reading.source.data, expected)) return byHand(file, step);
  return done(reading.source);
};

/** Lines are those of the text the person has; what is only being written has none. */
const refused = (editing: Editing, touched: DataPath, mistakes: readonly Mistake[]) => {
  const { source, file } = editing;
  const inEdited = ({ path }: Mistake): boolean => touched.every((part, at) => path[at] === part);
  const list = mistakes.map((mistake) => {
    const there = !inEdited(mistake) && placeAt(source, mistake.path.slice(0, 2)) !== null;
    return { ...mistake, line: there ? source.lineOf(mistake) : null };
  });
  return failed("kitchen-change-refused", { file, list: faultList(list) });
};

/**
 * The text with all steps made, one after the other. `touched` is the path of
 * the entry that changes. Fails with "kitchen-change-refused" where the result
 * would not be valid, with "kitchen-change-by-hand" where the text's form does
 * not let it be changed safely.
 */
export const edited = (
  editing: Editing,
  touched: DataPath,
  steps: readonly Step[],
): Outcome<string> => {
  let { source } = editing;
  for (const step of steps) {
    const made = stepMade(source, step, editing.file);
    if (!made.ok) return made;
    source = made.value;
  }
  const read = readKitchen(source.data);
  if (!read.ok) return refused(editing, touched, read.mistakes);
  return done(editing.text.startsWith("\uFEFF") ? `\uFEFF${source.text}` : source.text);
};

/** Opens a text for editing; a kitchen with mistakes is mended by its person first. */
export const openForEditing = (text: string, file: string): Outcome<Editing> => {
  const parsed = parseWithSource(text, file);
  return parsed.ok ? done({ text, file, ...parsed.value }) : parsed;
};
