/** What every command over a kitchen folder takes. */
import type { OptionEntry } from "./command-entry.ts";

export const kitchenOptions: readonly OptionEntry[] = [
  ["The kitchen", "--kitchen <folder>", "the kitchen's folder (default: this one)"],
  ["The answer", "--json", "print the result as data"],
];
