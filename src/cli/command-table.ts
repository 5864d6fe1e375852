/** Every command of the program, in the order of the help. A new one is one entry here. */
import { checkEntry } from "./entries/check-entry.ts";
import type { CommandEntry } from "./entries/command-entry.ts";
import { demoEntry } from "./entries/demo-entry.ts";

export const commandTable: readonly CommandEntry[] = [checkEntry, demoEntry];
