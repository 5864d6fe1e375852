/** What may be said about a logger's file, the same for every command that reads one. */
import type { OptionEntry } from "./command-entry.ts";

export const fileOptions: readonly OptionEntry[] = [
  ["The file", "--column <name>", "only this column is a temperature; may be given again"],
  ["The file", "--unit <unit>", "unit of a file that names none: C or F"],
  ["The file", "--date-order <order>", "day-first (dmy) or month-first (mdy)"],
  ["The file", "--decimal <mark>", "comma or point"],
  ["The file", "--interval <time>", "spacing of a file without times: 5s, 1min"],
];
