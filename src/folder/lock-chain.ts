/**
 * The lock of a folder as a chain of files, and why no two can own it.
 *
 * Reading a lock, finding its process dead and then removing it is not safe:
 * between the look and the removal somebody else may have removed it and taken
 * the lock himself, and his live lock would be removed. So nobody removes the
 * lock of a dead process. Whoever finds one adds a successor file, whose name
 * holds the token of the lock it follows; the owner is the last of the chain.
 *
 *   .holdband-lock              token a, its process was killed
 *   .holdband-lock.1.a          token b, killed as well
 *   .holdband-lock.2.b          token c, running: the owner
 *
 * 1. Files appear with their content whole, and only one process can create a
 *    name (place-new.ts). So a chain never forks: of several who find "b" dead,
 *    one gets the name ".2.b", the others see it and wait.
 * 2. A lock is followed only when its process is dead, and the dead stay dead,
 *    so nobody alive loses the lock. (Locks of other machines: below.)
 * 3. Only the owner takes the chain down, first file first; that one removal
 *    releases the lock. Tokens are never used twice, so while the first file
 *    still shows its token, no file of its chain has gone.
 * 4. One may walk the chain while its owner takes it down, and add a successor
 *    to a lock just removed. So after adding it he looks at the first file
 *    again: with the token he began with, by 3 his walk was of the whole
 *    chain, and the lock is his; else he has nothing, and starts anew.
 * 5. The owner begins the release by following himself. If that name is taken,
 *    others have held him for dead, and he removes nothing.
 *
 * Other machines on a shared drive cannot be asked whether a process lives;
 * their locks are followed once they are older than a limit far above what any
 * command needs. A process that sleeps longer than that limit in the middle of
 * its work can then lose the lock while it lives; before it writes, it still
 * compares the file with what it read, so it is refused and overwrites nothing.
 * On drives without hard links a lock can be seen before its content is there;
 * it counts as one of another machine.
 */
import { readdir, rm, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { newRecord, readLock, recordText } from "./lock-record.ts";
import type { FoundLock } from "./lock-record.ts";
import { placeNew } from "./place-new.ts";
import { temporaryPath } from "./temporary-file.ts";

export const lockName = ".holdband-lock";

const first = (folder: string): string => join(folder, lockName);

const linkPath = (folder: string, position: number, before: string): string =>
  position === 0 ? first(folder) : join(folder, `${lockName}.${position}.${before}`);

/** From the first file to the last; empty where the lock is free. */
export const readChain = async (folder: string): Promise<readonly FoundLock[]> => {
  const chain: FoundLock[] = [];
  for (;;) {
    const path = linkPath(folder, chain.length, chain.at(-1)?.token ?? "");
    // oxlint-disable-next-line no-await-in-loop -- each file names the next
    const found = await readLock(path);
    if (found === null) return chain;
    chain.push(found);
  }
};

/** Adds a record of this process to the end of `chain`; null where another was first. */
const append = async (
  folder: string,
  chain: readonly FoundLock[],
): Promise<{ readonly path: string; readonly token: string } | null> => {
  const record = newRecord();
  const path = linkPath(folder, chain.length, chain.at(-1)?.token ?? "");
  const part = temporaryPath(folder);
  try {
    await writeFile(part, recordText(record), { flag: "wx" });
    return (await placeNew(part, path)) ? { path, token: record.token } : null;
  } finally {
    await rm(part, { force: true });
  }
};

/** A chain of which this process is the owner. */
export type HeldChain = readonly FoundLock[];

/** Successors of chains long gone: their takers died between two steps. */
const sweepOldSuccessors = async (folder: string, token: string): Promise<void> => {
  const names = await readdir(folder);
  const old = names.filter(
    (name) => name.startsWith(`${lockName}.`) && !name.endsWith(`.1.${token}`),
  );
  await Promise.allSettled(old.map((name) => rm(join(folder, name))));
};

/**
 * Takes the lock at the end of `chain`, which is empty or whose last owner is
 * dead. null: somebody else was first, or the chain has changed; look again.
 */
export const takeLock = async (
  folder: string,
  chain: readonly FoundLock[],
): Promise<HeldChain | null> => {
  const mine = await append(folder, chain);
  if (mine === null) return null;
  const [head] = chain;
  const found = { ...mine, record: null, modified: 0 };
  if (head === undefined) {
    await sweepOldSuccessors(folder, mine.token).catch(() => undefined);
    return [found];
  }
  if ((await readLock(first(folder)))?.token === head.token) return [...chain, found];
  await rm(mine.path, { force: true });
  return null;
};

/** Gives the lock back; does nothing where others have followed this process meanwhile. */
export const releaseLock = async (folder: string, held: HeldChain): Promise<void> => {
  const end = await append(folder, held);
  if (end === null) return;
  await rm(first(folder), { force: true });
  const rest = [...held.slice(1), end];
  await Promise.allSettled(rest.map(({ path }) => rm(path, { force: true })));
};
