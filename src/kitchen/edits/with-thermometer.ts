/** A thermometer into kitchen.yaml. */
import type { Outcome } from "../../problem.ts";
import type { EditOptions, ThermometerEntry } from "./entries.ts";
import { withEntry } from "./entry-edit.ts";
import type { Fields } from "./entry-edit.ts";

/** Adds a thermometer; see `withEntry` for an id that is there already. */
export const withThermometer = (
  text: string,
  file: string,
  id: string,
  entry: ThermometerEntry,
  options?: EditOptions,
): Outcome<string> => withEntry(text, file, "thermometers", id, entry as Fields, options);
