import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { killAtStep } from "./kill-rounds.ts";
import { temporaryFolder } from "./temporary-folder.ts";
import { bundleWorker } from "./worker-process.ts";

describe("an update and two raw files, killed at every step in turn", () => {
  it("leave everything whole, and the next command goes on at once", async () => {
    const folder = temporaryFolder();
    const bundle = await bundleWorker(folder);
    const killed = (at: number) => killAtStep(bundle, join(folder, `kitchen-${at}`), at);
    const { counts, steps } = await killed(0);
    expect(counts).toMatchObject({ kills: 0, faults: [] });
    // An update alone opens, writes, flushes, renames, and takes and gives back the lock.
    expect(steps).toBeGreaterThan(40);
    const faults: string[] = [];
    let died = 0;
    const lane = async (first: number): Promise<void> => {
      for (let at = first; at <= steps; at += 3) {
        // oxlint-disable-next-line no-await-in-loop -- a lane is one after the other
        const one = await killed(at);
        died += one.counts.kills;
        faults.push(...one.counts.faults.map((fault) => `step ${at}: ${fault}`));
      }
    };
    await Promise.all([lane(1), lane(2), lane(3)]);
    expect(faults).toEqual([]);
    expect(died).toBe(steps);
  });
});
