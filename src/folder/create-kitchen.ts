/** Starting a kitchen folder without touching anything that is there. */
import { lstat, mkdir } from "node:fs/promises";
import type { Stats } from "node:fs";
import { join } from "node:path";
import { done, failed } from "../problem.ts";
import type { Outcome } from "../problem.ts";
import { kitchenPath } from "./kitchen-bytes.ts";
import { writeNew } from "./place-new.ts";
import { syncFolder } from "./sync-folder.ts";
import { systemReason } from "./system-reason.ts";

export const readingsName = "readings";
export const reportsName = "reports";

const find = async (path: string): Promise<Stats | null> => lstat(path).catch(() => null);

const kindOf = (found: Stats): string => (found.isSymbolicLink() ? "a link" : "a file");

/** What stands where a folder is to be made. */
const inTheWay = async (folder: string): Promise<string | null> => {
  for (const name of [readingsName, reportsName]) {
    // oxlint-disable-next-line no-await-in-loop -- two, and the first found is enough
    const found = await find(join(folder, name));
    if (found !== null && !found.isDirectory()) return `${kindOf(found)} called ${name}`;
  }
  return null;
};

const create = async (folder: string, text: string): Promise<Outcome<void>> => {
  const file = kitchenPath(folder);
  if ((await find(file)) !== null) return failed("kitchen-exists", { file });
  const found = await inTheWay(folder);
  if (found !== null) return failed("kitchen-in-the-way", { folder, found });
  await mkdir(join(folder, readingsName), { recursive: true });
  await mkdir(join(folder, reportsName), { recursive: true });
  // Last, because it is what makes a folder a kitchen; and another may have been quicker.
  if (!(await writeNew(file, text))) return failed("kitchen-exists", { file });
  await syncFolder(folder);
  return done(undefined);
};

/**
 * Makes `folder` with readings/, reports/ and kitchen.yaml holding `text`.
 * Other files in it stay; nothing is written over. Fails with "kitchen-exists",
 * "kitchen-in-the-way" (readings or reports is no folder, or `folder` is a
 * file) or "file-unwritable".
 */
export const createKitchen = async (folder: string, text: string): Promise<Outcome<void>> => {
  try {
    const found = await find(folder);
    if (found?.isFile() === true) {
      return failed("kitchen-in-the-way", { folder, found: "a file" });
    }
    return await create(folder, text);
  } catch (error) {
    return failed("file-unwritable", { file: kitchenPath(folder), why: systemReason(error) });
  }
};
