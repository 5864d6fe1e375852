/**
 * Kills processes at random instants while they work on a kitchen folder, and
 * looks at what is left: the promise is that nothing half is ever there under a
 * final name, nothing acknowledged is lost, and the next command goes on at once.
 */
import { mkdirSync, readFileSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { setTimeout as sleep } from "node:timers/promises";
import { updateKitchen } from "../../src/folder/kitchen-file.ts";
import { storeRawText } from "../../src/folder/raw-files.ts";
import { done } from "../../src/problem.ts";
import { versionOf, versionedText } from "./versioned-text.ts";
import { startWorker } from "./worker-process.ts";
import type { Worker } from "./worker-process.ts";

export interface KillCounts {
  kills: number;
  /** Kills after which the folder was still locked by the dead. */
  lockedKills: number;
  /** Kills that left a temporary file. */
  partKills: number;
  versions: number;
  rawFiles: number;
  /** Longest time the next command took to take over, ms. */
  slowestTakeOver: number;
  /** Everything that should not be; empty is good. */
  faults: string[];
}

const textOf = (path: string): string => readFileSync(path, "utf8");

const names = (folder: string, pattern: RegExp): readonly string[] =>
  readdirSync(folder).filter((name) => pattern.test(name));

const ours = /^\.holdband/;

export const startFolder = (folder: string): void => {
  mkdirSync(join(folder, "readings"), { recursive: true });
  writeFileSync(join(folder, "kitchen.yaml"), versionedText(0, "start"));
  writeFileSync(join(folder, "kitchen.previous.yaml"), versionedText(0, "start"));
  writeFileSync(join(folder, "source.csv"), versionedText(4000, "source"));
};

interface Said {
  readonly versions: readonly number[];
  readonly raw: readonly string[];
}

const saidBy = async (workers: readonly Worker[], counts: KillCounts): Promise<Said> => {
  const all = await Promise.all(workers.map(({ ended }) => ended));
  const lines = all.flatMap((one) => one.lines);
  counts.faults.push(...lines.filter((line) => line.startsWith("problem")));
  counts.kills += all.filter(({ signal }) => signal === "SIGKILL").length;
  const after = (word: string): readonly string[] =>
    lines.filter((line) => line.startsWith(`${word} `)).map((line) => line.slice(word.length + 1));
  return { versions: after("version").map(Number), raw: after("raw") };
};

/** What must hold right after the kill, before anything of ours touches the folder. */
const inspect = (folder: string, said: Said, before: number, counts: KillCounts): void => {
  const { faults } = counts;
  const version = versionOf(textOf(join(folder, "kitchen.yaml")));
  const highest = Math.max(before, ...said.versions);
  if (version === null) faults.push("kitchen.yaml is torn");
  // Each of the killed may have finished one write that it could no longer tell of.
  else if (version < highest) faults.push(`version ${highest} was promised, ${version} is there`);
  for (const name of names(folder, /^kitchen\.previous\.yaml$/)) {
    const previous = versionOf(textOf(join(folder, name)));
    if (previous === null) faults.push("the previous version is torn");
    else if (version !== null && (previous > version || previous < version - 1)) {
      faults.push(`version ${previous} is kept as the one before ${version}`);
    }
  }
  if (new Set(said.versions).size !== said.versions.length) faults.push("an update was lost");
  const kept = names(join(folder, "readings"), /^[^.]/);
  for (const name of kept) {
    if (versionOf(textOf(join(folder, "readings", name))) === null) faults.push(`${name} is torn`);
  }
  const lost = said.raw.filter((path) => !kept.includes(path.replace("readings/", "")));
  faults.push(...lost.map((path) => `${path} was promised and is not there`));
  counts.rawFiles += kept.length;
  counts.versions += said.versions.length;
  if (names(folder, /^\.holdband-lock$/).length > 0) counts.lockedKills += 1;
  const parts = [folder, join(folder, "readings")].flatMap((one) => names(one, /\.part$/));
  if (parts.length > 0) counts.partKills += 1;
};

/** The next command: must not wait for the dead, and sweeps up after them. */
const takeOver = async (folder: string, counts: KillCounts): Promise<number> => {
  let version = -1;
  const start = performance.now();
  const updated = await updateKitchen(
    folder,
    (text) => {
      version = (versionOf(text) ?? -2) + 1;
      return done(versionedText(version, "parent"));
    },
    { patience: 0 },
  );
  counts.slowestTakeOver = Math.max(counts.slowestTakeOver, performance.now() - start);
  if (!updated.ok) counts.faults.push(`the next command: ${updated.problem.code}`);
  await storeRawText(folder, "parent.csv", versionedText(version, "parent"));
  const left = [folder, join(folder, "readings")].flatMap((one) => names(one, ours));
  if (left.length > 0) counts.faults.push(`not swept up: ${left.join(", ")}`);
  return version;
};

const forgetRaw = (folder: string): void => {
  for (const name of readdirSync(join(folder, "readings"))) rmSync(join(folder, "readings", name));
};

const killSoon = async ({ ready, kill }: Worker): Promise<void> => {
  await ready;
  await sleep(Math.random() * 200);
  kill();
};

const noCounts = (): KillCounts => ({
  kills: 0,
  lockedKills: 0,
  partKills: 0,
  versions: 0,
  rawFiles: 0,
  slowestTakeOver: 0,
  faults: [],
});

/** Kills one process at its step of that number; 0: never. Gives all of its steps where it lived. */
export const killAtStep = async (
  bundle: string,
  folder: string,
  at: number,
): Promise<{ readonly counts: KillCounts; readonly steps: number }> => {
  startFolder(folder);
  const counts = noCounts();
  const worker = startWorker(bundle, ["dying", folder, String(at)]);
  inspect(folder, await saidBy([worker], counts), 0, counts);
  await takeOver(folder, counts);
  const { lines } = await worker.ended;
  return { counts, steps: Number(lines.at(-1)?.replace("steps ", "")) };
};

/** Rounds of one to three workers, each killed up to 200 ms after it began; until `kills`. */
export const killRounds = async (
  bundle: string,
  folder: string,
  kills: number,
  tell: (counts: KillCounts) => void = () => undefined,
): Promise<KillCounts> => {
  startFolder(folder);
  const counts = noCounts();
  let version = 0;
  /* oxlint-disable no-await-in-loop -- round after round */
  for (let round = 0; counts.kills < kills; round += 1) {
    const workers = Array.from({ length: 1 + (round % 3) }, () =>
      startWorker(bundle, ["forever", folder]),
    );
    await Promise.all(workers.map(killSoon));
    inspect(folder, await saidBy(workers, counts), version, counts);
    version = await takeOver(folder, counts);
    forgetRaw(folder);
    tell(counts);
  }
  /* oxlint-enable no-await-in-loop */
  return counts;
};
