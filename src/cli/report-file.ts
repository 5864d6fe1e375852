/** Writing the report: all of it or nothing, and never over something else. */
import { open, rm, stat } from "node:fs/promises";
import { dirname, resolve } from "node:path";
import { done, failed } from "../problem.ts";
import type { Outcome } from "../problem.ts";
import { replaceFile } from "../folder/replace-file.ts";
import { systemReason } from "../folder/system-reason.ts";
import { temporaryPath } from "../folder/temporary-file.ts";

const unwritable = (file: string, why: string) => failed("report-unwritable", { file, why });

const startOf = async (file: string): Promise<string> => {
  const handle = await open(file, "r");
  const { buffer, bytesRead } = await handle
    .read(Buffer.alloc(200), 0, 200, 0)
    .finally(() => handle.close());
  return buffer.toString("utf8", 0, bytesRead);
};

/** How every report and page of ours begins: no other page forbids itself so much so early. */
const ours =
  /^<!doctype html>\s[^]*http-equiv="Content-Security-Policy" content="default-src 'none'/;

/** An earlier report or page, or an empty file, may be replaced; anything else is somebody's data. */
const mayReplace = async (file: string): Promise<Outcome<void>> => {
  try {
    const found = await stat(file);
    if (found.isDirectory()) return unwritable(file, "it is a folder");
    if (!found.isFile()) return unwritable(file, "it is not an ordinary file");
    const replaceable = found.size === 0 || ours.test(await startOf(file));
    return replaceable ? done(undefined) : unwritable(file, "a file that is not a report is there");
  } catch (error) {
    const absent = (error as NodeJS.ErrnoException).code === "ENOENT";
    return absent ? done(undefined) : unwritable(file, systemReason(error));
  }
};

/** Asks before the long work whether the report can be written; leaves nothing behind. */
export const checkReportPath = async (file: string): Promise<Outcome<void>> => {
  const free = await mayReplace(file);
  if (!free.ok) return free;
  try {
    const probe = temporaryPath(dirname(resolve(file)));
    await (await open(probe, "wx")).close();
    await rm(probe);
    return done(undefined);
  } catch (error) {
    return unwritable(file, systemReason(error));
  }
};

/** All of it or nothing: a kill at any instant leaves no half report. */
export const writeReport = async (file: string, text: string): Promise<Outcome<void>> => {
  const written = await replaceFile(resolve(file), text);
  if (written.ok || written.problem.code !== "file-unwritable") return written;
  return unwritable(file, written.problem.facts.why);
};
