/** A thermometer's check into kitchen.yaml. */
import type { Outcome } from "../../problem.ts";
import { edited, openForEditing } from "./edit.ts";
import type { CheckEntry } from "./entries.ts";
import type { EntryValue } from "./written-entry.ts";

/** Adds a check after those a thermometer has; the thermometer is added where it is new. */
export const withCheck = (
  text: string,
  file: string,
  thermometerId: string,
  check: CheckEntry,
): Outcome<string> => {
  const opened = openForEditing(text, file);
  if (!opened.ok) return opened;
  const path = ["thermometers", thermometerId];
  const value = check as EntryValue;
  return edited(opened.value, path, [[{ kind: "add item", path: [...path, "checks"], value }]]);
};
