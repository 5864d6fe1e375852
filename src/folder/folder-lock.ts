/** One at a time: a lock on the kitchen folder while it is read, edited and written. */
import { stat, writeFile, rm } from "node:fs/promises";
import { join } from "node:path";
import { setTimeout as sleep } from "node:timers/promises";
import { done, failed } from "../problem.ts";
import type { Outcome } from "../problem.ts";
import { lockName, readChain, releaseLock, takeLock } from "./lock-chain.ts";
import type { HeldChain } from "./lock-chain.ts";
import type { FoundLock } from "./lock-record.ts";
import { lifeOf } from "./process-mark.ts";
import { systemReason } from "./system-reason.ts";
import { temporaryPath } from "./temporary-file.ts";

export interface LockOptions {
  /** How long to wait for another process, ms. */
  readonly patience?: number;
  /** Age from which a lock of a machine that cannot be asked counts as left behind, ms. */
  readonly foreignLimit?: number;
}

const tenSeconds = 10_000;
const fiveMinutes = 300_000;

/** The drive's own clock, which also dated the lock: another machine's may be wrong. */
const driveClock = async (folder: string): Promise<number> => {
  const probe = temporaryPath(folder);
  try {
    await writeFile(probe, "", { flag: "wx" });
    return (await stat(probe)).mtimeMs;
  } finally {
    await rm(probe, { force: true });
  }
};

const isLeftBehind = async (
  folder: string,
  { record, modified }: FoundLock,
  foreignLimit: number,
): Promise<boolean> => {
  const life = record === null ? "unknown" : lifeOf(record);
  if (life !== "unknown") return life === "gone";
  return (await driveClock(folder)) - modified > foreignLimit;
};

type Attempt =
  { readonly held: HeldChain } | { readonly held: null; readonly holder: FoundLock | null };

const attempt = async (folder: string, foreignLimit: number): Promise<Attempt> => {
  const chain = await readChain(folder);
  const holder = chain.at(-1) ?? null;
  if (holder !== null && !(await isLeftBehind(folder, holder, foreignLimit))) {
    return { held: null, holder };
  }
  const held = await takeLock(folder, chain);
  return held === null ? { held, holder: null } : { held };
};

const clockText = (iso: string): string => `${iso.slice(0, 19).replace("T", " ")} UTC`;

const refusal = (folder: string, holder: FoundLock | null) =>
  failed("kitchen-locked", {
    folder,
    holder:
      holder?.record == null
        ? "another process"
        : `process ${holder.record.pid} on ${holder.record.host}`,
    since: clockText(
      holder?.record?.since ?? new Date(holder?.modified ?? Date.now()).toISOString(),
    ),
  });

/** Grows, and differs from process to process, so that those who wait do not march in step. */
const pause = (tries: number): number => (0.5 + Math.random()) * Math.min(80, 5 * 1.3 ** tries);

const acquire = async (
  folder: string,
  { patience = tenSeconds, foreignLimit = fiveMinutes }: LockOptions,
): Promise<Outcome<HeldChain>> => {
  const end = performance.now() + patience;
  /* oxlint-disable no-await-in-loop -- one try after the other is what waiting is */
  for (let tries = 0; ; tries += 1) {
    const result = await attempt(folder, foreignLimit);
    if (result.held !== null) return done(result.held);
    if (performance.now() >= end) return refusal(folder, result.holder);
    await sleep(pause(tries));
  }
  /* oxlint-enable no-await-in-loop */
};

const acquireOrWhy = async (folder: string, options: LockOptions): Promise<Outcome<HeldChain>> => {
  try {
    return await acquire(folder, options);
  } catch (error) {
    return failed("file-unwritable", { file: join(folder, lockName), why: systemReason(error) });
  }
};

/**
 * Does `work` while no other process (nor another call in this one) works on
 * `folder`. Waits up to `patience`, then fails with "kitchen-locked", which
 * says who holds it since when. A lock whose process is dead is taken over at
 * once; why that is safe stands in lock-chain.ts. Not reentrant.
 */
export const withFolderLock = async <Value>(
  folder: string,
  work: () => Promise<Outcome<Value>>,
  options: LockOptions = {},
): Promise<Outcome<Value>> => {
  const held = await acquireOrWhy(folder, options);
  if (!held.ok) return held;
  try {
    return await work();
  } finally {
    // A lock that cannot be removed is left behind and taken over when this process ends.
    await releaseLock(folder, held.value).catch(() => undefined);
  }
};
