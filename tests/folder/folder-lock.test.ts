import { mkdirSync, readFileSync, utimesSync } from "node:fs";
import { join } from "node:path";
import { setTimeout as sleep } from "node:timers/promises";
import { describe, expect, it } from "vitest";
import { withFolderLock } from "../../src/folder/folder-lock.ts";
import { newRecord } from "../../src/folder/lock-record.ts";
import { done, failed } from "../../src/problem.ts";
import { deadRecord, foreignRecord, plant } from "./dead-lock.ts";
import { codeOf, textOf, valueOf } from "./outcomes.ts";
import { namesIn, temporaryFolder, write } from "./temporary-folder.ts";
import { bundleWorker, startWorker } from "./worker-process.ts";

const nothing = () => Promise.resolve(done(undefined));
const minutesAgo = (minutes: number): Date => new Date(Date.now() - minutes * 60_000);

describe("withFolderLock", () => {
  it("gives what the work gave, good or bad, and lets go", async () => {
    const folder = temporaryFolder();
    expect(valueOf(await withFolderLock(folder, () => Promise.resolve(done(7))))).toBe(7);
    const bad = await withFolderLock(folder, () =>
      Promise.resolve(failed("file-empty", { file: "a" })),
    );
    expect(codeOf(bad)).toBe("file-empty");
    await expect(
      withFolderLock(folder, () => Promise.reject(new Error("a mistake"))),
    ).rejects.toThrow("a mistake");
    expect(namesIn(folder)).toEqual([]);
  });

  it("lets one in at a time, within one process too", async () => {
    const folder = temporaryFolder();
    let inside = 0;
    let most = 0;
    const work = async () => {
      inside += 1;
      most = Math.max(most, inside);
      await sleep(2);
      inside -= 1;
      return done(undefined);
    };
    const all = await Promise.all(Array.from({ length: 20 }, () => withFolderLock(folder, work)));
    expect(all.every(({ ok }) => ok)).toBe(true);
    expect(most).toBe(1);
  });

  it("waits as long as it was told, then says who holds the folder since when", async () => {
    const folder = temporaryFolder();
    plant(folder, { ...newRecord(), host: "pantry", since: "2026-11-25T22:30:00.000Z" });
    const start = performance.now();
    const text = textOf(await withFolderLock(folder, nothing, { patience: 200 }));
    expect(performance.now() - start).toBeGreaterThanOrEqual(200);
    expect(text).toContain(`process ${process.pid} on pantry since 2026-11-25 22:30:00 UTC`);
    expect(namesIn(folder)).toEqual([".holdband-lock"]);
  });

  it("goes on at once where the holder is dead", async () => {
    const folder = temporaryFolder();
    plant(folder, deadRecord());
    expect(codeOf(await withFolderLock(folder, nothing, { patience: 0 }))).toBe("");
    expect(namesIn(folder)).toEqual([]);
  });

  it("waits for another machine, until its lock is too old to be alive", async () => {
    const folder = temporaryFolder();
    const path = plant(folder, foreignRecord());
    utimesSync(path, minutesAgo(4), minutesAgo(4));
    expect(textOf(await withFolderLock(folder, nothing, { patience: 0 }))).toContain("on pantry");
    utimesSync(path, minutesAgo(6), minutesAgo(6));
    expect(codeOf(await withFolderLock(folder, nothing, { patience: 0 }))).toBe("");
    expect(namesIn(folder)).toEqual([]);
  });

  it("treats a lock that it cannot read like one of another machine", async () => {
    const folder = temporaryFolder();
    const path = write(folder, ".holdband-lock", "");
    expect(textOf(await withFolderLock(folder, nothing, { patience: 0 }))).toContain(
      "held by another process",
    );
    utimesSync(path, minutesAgo(6), minutesAgo(6));
    expect(codeOf(await withFolderLock(folder, nothing, { patience: 0 }))).toBe("");
  });

  it("says why it cannot lock", async () => {
    const folder = temporaryFolder();
    const missing = await withFolderLock(join(folder, "none"), nothing);
    expect(textOf(missing)).toContain("the folder does not exist");
    mkdirSync(join(folder, ".holdband-lock"));
    expect(textOf(await withFolderLock(folder, nothing))).toContain("it is a folder");
  });
});

describe("many processes that die with the lock", () => {
  it("are in one at a time, and those who live on never wait for the dead", async () => {
    const folder = temporaryFolder();
    const bundle = await bundleWorker(temporaryFolder());
    let dead = 0;
    const lane = async (): Promise<void> => {
      // Each lane goes on with a new process when one has died.
      for (let turn = 0; turn < 4; turn += 1) {
        // oxlint-disable-next-line no-await-in-loop -- a lane is one after the other
        const { signal, code, lines } = await startWorker(bundle, ["storm", folder, "8"]).ended;
        expect([lines.slice(1), code ?? signal]).toEqual([[], code === 0 ? 0 : "SIGKILL"]);
        if (signal !== null) dead += 1;
      }
    };
    await Promise.all(Array.from({ length: 6 }, lane));
    // With 24 processes that die with probability 0.73 each, none dying would be a broken test.
    expect(dead).toBeGreaterThan(3);
    const log = readFileSync(join(folder, "log"), "utf8").trimEnd().split("\n");
    const open = new Map<string, number>();
    log.forEach((line, at) => {
      const [step = "", writer = ""] = line.split(" ");
      if (step === "in") open.set(writer, at);
      // Between coming in and going out of one process, no other came in.
      else expect([writer, open.get(writer)]).toEqual([writer, at - 1]);
    });
    const comings = log.filter((line) => line.startsWith("in")).length;
    expect(comings).toBe(log.length - comings + dead);
    await withFolderLock(folder, nothing);
    expect(namesIn(folder).filter((name) => name !== "log")).toEqual([]);
  });
});
