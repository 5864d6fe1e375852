/** Lock files as processes leave them that were killed, or that run on other machines. */
import { spawnSync } from "node:child_process";
import { newRecord, recordText } from "../../src/folder/lock-record.ts";
import type { LockRecord } from "../../src/folder/lock-record.ts";
import { write } from "./temporary-folder.ts";

/** The number of a process that has just ended. */
export const deadPid: number = spawnSync(process.execPath, ["-e", "0"]).pid;

export const deadRecord = (): LockRecord => ({ ...newRecord(), pid: deadPid, started: null });

export const foreignRecord = (): LockRecord => ({
  ...newRecord(),
  place: "0123456789ab",
  host: "pantry",
});

export const plant = (folder: string, record: LockRecord, name = ".holdband-lock"): string =>
  write(folder, name, recordText(record));
