/** A study over consecutive seeds, shared out among processes. */
import { fork } from "node:child_process";
import { fileURLToPath } from "node:url";
import type { StudyRecord } from "./record.ts";

/** Each job takes every `jobs`-th seed, so that all are busy to the end. */
export async function studied(
  firstSeed: number,
  cases: number,
  jobs: number,
): Promise<readonly StudyRecord[]> {
  const parts = Array.from({ length: jobs }, (_, job) =>
    inChild([firstSeed + job, firstSeed + cases, jobs]),
  );
  return (await Promise.all(parts)).flat().toSorted((a, b) => a.seed - b.seed);
}

const inChild = (range: readonly number[]): Promise<StudyRecord[]> =>
  new Promise((resolve, reject) => {
    const file = fileURLToPath(new URL("job.ts", import.meta.url));
    const child = fork(file, range.map(String), { execArgv: ["--import", "tsx"] });
    child.on("message", (message) => resolve(message as StudyRecord[]));
    child.on("error", reject);
    // After its message a job's end means nothing more; before it, the records are lost.
    child.on("exit", (code) => reject(new Error(`a job ended with ${code} before its records`)));
  });
