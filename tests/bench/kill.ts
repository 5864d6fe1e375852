/**
 * Kills processes at random instants while they write a kitchen folder:
 *
 *   npm run bench:kill              300 kills
 *   npm run bench:kill -- 1000      as many as wanted
 */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { killRounds } from "../folder/kill-rounds.ts";
import { bundleWorker } from "../folder/worker-process.ts";

const kills = Number(process.argv[2] ?? 300);
const folder = mkdtempSync(join(tmpdir(), "holdband-kill-"));
const start = performance.now();
const counts = await killRounds(
  await bundleWorker(folder),
  join(folder, "kitchen"),
  kills,
  ({ kills: so, faults }) => process.stderr.write(`\r${so} kills, ${faults.length} faults `),
);
rmSync(folder, { recursive: true, force: true });
process.stderr.write("\n");
const seconds = ((performance.now() - start) / 1000).toFixed(0);
process.stdout.write(
  [
    `processes killed while at work          ${counts.kills} (in ${seconds} s)`,
    `updates of kitchen.yaml acknowledged    ${counts.versions}`,
    `raw files looked at after the kills     ${counts.rawFiles}`,
    `rounds that left the folder locked      ${counts.lockedKills}`,
    `rounds that left a temporary file       ${counts.partKills}`,
    `slowest next command                    ${counts.slowestTakeOver.toFixed(0)} ms`,
    `torn, lost, locked or left over         ${counts.faults.length}`,
    ...counts.faults.slice(0, 20).map((fault) => `  ${fault}`),
    "",
  ].join("\n"),
);
process.exitCode = counts.faults.length === 0 ? 0 : 1;
