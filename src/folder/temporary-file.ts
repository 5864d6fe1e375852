/** Temporary files beside their targets, and sweeping up those of dead processes. */
import { randomBytes } from "node:crypto";
import { open, readdir, rm, stat } from "node:fs/promises";
import { join } from "node:path";
import { lifeOf, thisPlace } from "./process-mark.ts";

/** No write takes so long without touching its file. */
const oldMs = 60 * 60 * 1000;

/** A new name in `folder`; the name says whose it is, so that others can tell whether he lives. */
export const temporaryPath = (folder: string): string =>
  join(folder, `.holdband-${thisPlace}-${process.pid}-${randomBytes(6).toString("hex")}.part`);

/** Creates `path`, which must not be there, with `content` on the disk and not only on its way there. */
export const writeFlushed = async (path: string, content: string | Uint8Array): Promise<void> => {
  const handle = await open(path, "wx");
  await handle
    .writeFile(content)
    .then(() => handle.sync())
    .finally(() => handle.close());
};

const namePattern = /^\.holdband-([0-9a-f]{12})-(\d{1,10})-[0-9a-f]{12}\.part$/;

const mayGo = async (path: string, place: string, pid: number): Promise<boolean> => {
  if (lifeOf({ pid, place, started: null }) === "gone") return true;
  return Date.now() - (await stat(path)).mtimeMs > oldMs;
};

/**
 * Removes what writers killed half-way left in `folder`: only files of our own
 * name pattern, and only when their process is dead or they are an hour old.
 * What cannot be removed stays; sweeping never stands in the way of a write.
 */
export const sweepTemporary = async (folder: string): Promise<void> => {
  const names = await readdir(folder).catch(() => []);
  const sweepOne = async (name: string): Promise<void> => {
    const [, place, pid] = namePattern.exec(name) ?? [];
    if (place === undefined || pid === undefined) return;
    const path = join(folder, name);
    if (await mayGo(path, place, Number(pid))) await rm(path, { force: true });
  };
  await Promise.allSettled(names.map(sweepOne));
};
