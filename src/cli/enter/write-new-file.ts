/** A new file, whole or not at all, and never over another. */
import { stat } from "node:fs/promises";
import { dirname, resolve } from "node:path";
import { writeNew } from "../../folder/place-new.ts";
import { systemReason } from "../../folder/system-reason.ts";
import { done, failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";

const taken = (file: string) =>
  failed("file-unwritable", { file, why: "something with that name is there already" });

/** Asked before the typing begins: a taken name should not come as news at its end. */
export const isFreeName = async (file: string): Promise<Outcome<void>> => {
  const found = await stat(file).catch(() => null);
  if (found !== null) return taken(file);
  const folder = await stat(dirname(resolve(file))).catch(() => null);
  if (folder?.isDirectory() === true) return done(undefined);
  return failed("file-unwritable", { file, why: "the folder does not exist" });
};

export const writeNewFile = async (file: string, text: string): Promise<Outcome<void>> => {
  try {
    return (await writeNew(resolve(file), text)) ? done(undefined) : taken(file);
  } catch (error) {
    return failed("file-unwritable", { file, why: systemReason(error) });
  }
};
