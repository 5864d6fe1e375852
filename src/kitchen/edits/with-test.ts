/** A water test into kitchen.yaml. */
import type { Outcome } from "../../problem.ts";
import type { EditOptions, TestEntry } from "./entries.ts";
import { withEntry } from "./entry-edit.ts";
import type { Fields } from "./entry-edit.ts";

/** Adds a water test; see `withEntry` for an id that is there already. */
export const withTest = (
  text: string,
  file: string,
  id: string,
  entry: TestEntry,
  options?: EditOptions,
): Outcome<string> => withEntry(text, file, "tests", id, entry as Fields, options);
