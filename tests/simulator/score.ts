/**
 * Scores the analysis on the simulated population.
 *
 *   npx tsx tests/simulator/score.ts --cases 1000 --seed 1 [--jobs 2] [--json out.json]
 *     [--structure lumped|layered] [--program 20] [--show 15]
 *   npx tsx tests/simulator/score.ts --case 17 [--keep FOLDER]
 *
 * Cases are seeds `seed` to `seed + cases - 1`, each written in its own
 * dialect. All run through the core in this process; the first `--program`
 * cases run through the built program (dist/holdband.js) as well. `--case`
 * prints one case's truth and command, and keeps its file.
 */
import { fork } from "node:child_process";
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import type { Structure } from "./appliance-kinds.ts";
import { scoreCase } from "./score-case.ts";
import { summarise } from "./score-summary.ts";
import { failureText, summaryText } from "./score-text.ts";
import type { CaseScore } from "./score-types.ts";
import { writtenCase } from "./written-case.ts";

const { values } = parseArgs({
  options: {
    cases: { type: "string", default: "200" },
    seed: { type: "string", default: "1" },
    jobs: { type: "string", default: "1" },
    json: { type: "string" },
    structure: { type: "string" },
    program: { type: "string", default: "0" },
    show: { type: "string", default: "15" },
    case: { type: "string" },
    keep: { type: "string" },
    worker: { type: "boolean", default: false },
  },
});

const structure = values.structure as Structure | undefined;

async function scoreRange(from: number, count: number, step: number): Promise<CaseScore[]> {
  const scores: CaseScore[] = [];
  const programUpTo = Number(values.seed) + Number(values.program);
  for (let seed = from; seed < Number(values.seed) + count; seed += step)
    // oxlint-disable-next-line no-await-in-loop -- one case at a time keeps memory small
    scores.push(await scoreCase(seed, structure, seed < programUpTo));
  return scores;
}

/** Every job takes each `jobs`-th seed, so that all are busy to the end. */
async function scoreAll(): Promise<CaseScore[]> {
  const [first, count, jobs] = [values.seed, values.cases, values.jobs].map(Number) as [
    number,
    number,
    number,
  ];
  if (jobs === 1) return scoreRange(first, count, 1);
  const parts = Array.from({ length: jobs }, (_, job) => job).map((job) => inChild(first + job));
  return (await Promise.all(parts)).flat().toSorted((a, b) => a.seed - b.seed);
}

const inChild = (from: number): Promise<CaseScore[]> =>
  new Promise((resolve, reject) => {
    const passed = [...process.argv.slice(2), "--worker", "--case", String(from)];
    const child = fork(fileURLToPath(import.meta.url), passed);
    child.on("message", (message) => resolve(message as CaseScore[]));
    child.on("error", reject);
    // After its message a job's end means nothing more; before it, the scores are lost.
    child.on("exit", (code) => reject(new Error(`a job ended with ${code} before its scores`)));
  });

const shown = (word: string): string => (/^[\w.=+-]+$/.test(word) ? word : `'${word}'`);

async function showOne(seed: number): Promise<void> {
  const written = writtenCase(seed, structure);
  const folder = values.keep;
  const file = join(folder ?? ".", `case-${seed}.csv`);
  if (folder !== undefined) {
    mkdirSync(folder, { recursive: true });
    writeFileSync(file, written.bytes);
  }
  const score = await scoreCase(seed, structure, false);
  const { phases, verdict } = written.simulated.truth;
  console.log(JSON.stringify({ ...score, verdictTruth: verdict }, null, 1));
  const origin = Math.min(...phases.map(({ fromSeconds }) => fromSeconds));
  for (const { kind, cause, fromSeconds, toSeconds } of phases)
    console.log(
      `${((fromSeconds - origin) / 60).toFixed(1).padStart(8)} ${((toSeconds - origin) / 60).toFixed(1).padStart(8)} min  ${kind} ${cause ?? ""}`,
    );
  console.log(
    ["node dist/holdband.js check", file, ...written.options]
      .map((word, at) => (at < 2 ? word : shown(word)))
      .join(" "),
  );
}

async function main(): Promise<void> {
  if (values.worker) {
    const part = await scoreRange(Number(values.case), Number(values.cases), Number(values.jobs));
    // A long message is still on its way when send() returns.
    process.send!(part, () => process.disconnect());
    return;
  }
  if (values.case !== undefined) return showOne(Number(values.case));
  const scores = await scoreAll();
  const summary = summarise(scores);
  console.log(summaryText(summary));
  console.log(failureText(scores, Number(values.show)));
  if (values.json !== undefined)
    writeFileSync(values.json, JSON.stringify({ summary, scores }, null, 1));
}

await main();
