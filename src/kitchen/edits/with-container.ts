/** A container into kitchen.yaml. */
import type { Outcome } from "../../problem.ts";
import type { EditOptions, ContainerEntry } from "./entries.ts";
import { withEntry } from "./entry-edit.ts";
import type { Fields } from "./entry-edit.ts";

/** Adds a container; see `withEntry` for an id that is there already. */
export const withContainer = (
  text: string,
  file: string,
  id: string,
  entry: ContainerEntry,
  options?: EditOptions,
): Outcome<string> => withEntry(text, file, "containers", id, entry as Fields, options);
