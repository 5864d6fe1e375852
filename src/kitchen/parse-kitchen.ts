/** The text of a kitchen file to a kitchen: the one door for reading. */
import { done, failed } from "../problem.ts";
import type { Outcome } from "../problem.ts";
import { faultList } from "./fault.ts";
import type { Fault } from "./fault.ts";
import type { Kitchen } from "./kitchen.ts";
import { readKitchen } from "./schema/kitchen-schema.ts";
import { located, readSource } from "./text/kitchen-source.ts";
import type { KitchenSource } from "./text/kitchen-source.ts";

export interface ParsedKitchen {
  readonly source: KitchenSource;
  readonly kitchen: Kitchen;
}

/** Every fault of one file as one problem. */
export const invalidKitchen = (file: string, faults: readonly Fault[]) =>
  failed("kitchen-invalid", { file, count: faults.length, list: faultList(faults) });

/** The kitchen, and the parsed text for those who change it. */
export const parseWithSource = (text: string, file: string): Outcome<ParsedKitchen> => {
  const reading = readSource(text);
  if (!reading.ok) return invalidKitchen(file, reading.faults);
  const { source } = reading;
  const read = readKitchen(source.data);
  if (read.ok) return done({ source, kitchen: read.kitchen });
  const faults = located(read.mistakes, source.lineOf);
  return invalidKitchen(file, faults);
};

/**
 * Reads kitchen.yaml. `file` is what sentences call it. All mistakes are
 * reported together ("kitchen-invalid"), each with its line; nothing is
 * guessed, and no text makes it throw.
 */
export const parseKitchen = (text: string, file: string): Outcome<Kitchen> => {
  const parsed = parseWithSource(text, file);
  return parsed.ok ? done(parsed.value.kitchen) : parsed;
};
