/** Every command of the program, in the order of the help. A new one is one entry here. */
import { addEntry } from "./entries/add-entry.ts";
import { applianceEntry } from "./entries/appliance-entry.ts";
import { batchEntry } from "./entries/batch-entry.ts";
import { checkEntry } from "./entries/check-entry.ts";
import type { CommandEntry } from "./entries/command-entry.ts";
import { containerEntry } from "./entries/container-entry.ts";
import { cultureEntry } from "./entries/culture-entry.ts";
import { demoEntry } from "./entries/demo-entry.ts";
import { enterEntry } from "./entries/enter-entry.ts";
import { heatingEntry } from "./entries/heating-entry.ts";
import { initEntry } from "./entries/init-entry.ts";
import { matchEntry } from "./entries/match-entry.ts";
import { nextEntry } from "./entries/next-entry.ts";
import { pageEntry } from "./entries/page-entry.ts";
import { recheckEntry } from "./entries/recheck-entry.ts";
import { removeEntry, renameEntry } from "./entries/rename-entry.ts";
import { reportEntry } from "./entries/report-entry.ts";
import { thermometerEntry } from "./entries/thermometer-entry.ts";

export const commandTable: readonly CommandEntry[] = [
  checkEntry,
  heatingEntry,
  demoEntry,
  pageEntry,
  initEntry,
  thermometerEntry,
  applianceEntry,
  containerEntry,
  cultureEntry,
  addEntry,
  enterEntry,
  batchEntry,
  reportEntry,
  matchEntry,
  nextEntry,
  recheckEntry,
  renameEntry,
  removeEntry,
];
