import { readFileSync, renameSync, statSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { newRecord } from "../../src/folder/lock-record.ts";
import { readKitchenText, updateKitchen } from "../../src/folder/kitchen-file.ts";
import { done, failed } from "../../src/problem.ts";
import { plant } from "./dead-lock.ts";
import { killRounds, startFolder } from "./kill-rounds.ts";
import { codeOf, valueOf } from "./outcomes.ts";
import { namesIn, temporaryFolder, write } from "./temporary-folder.ts";
import { versionOf } from "./versioned-text.ts";
import { bundleWorker, startWorker } from "./worker-process.ts";

const read = (path: string): string => readFileSync(path, "utf8");

const kitchen = (text: string): { readonly folder: string; readonly file: string } => {
  const folder = temporaryFolder();
  return { folder, file: write(folder, "kitchen.yaml", text) };
};

const append = (line: string) => (text: string) => done(text + line);

describe("readKitchenText", () => {
  it("gives the text, or the problem of reading it", async () => {
    expect(valueOf(await readKitchenText(kitchen("room: 20\n").folder))).toBe("room: 20\n");
    expect(codeOf(await readKitchenText(temporaryFolder()))).toBe("kitchen-missing");
  });
});

describe("updateKitchen", () => {
  it("writes the edited text and keeps the one before", async () => {
    const { folder, file } = kitchen("a: 1\n");
    valueOf(await updateKitchen(folder, append("b: 2\n")));
    expect(read(file)).toBe("a: 1\nb: 2\n");
    expect(read(join(folder, "kitchen.previous.yaml"))).toBe("a: 1\n");
    expect(namesIn(folder)).toEqual(["kitchen.previous.yaml", "kitchen.yaml"]);
  });

  it("writes nothing where the edit changed nothing, or failed", async () => {
    const { folder, file } = kitchen("a: 1\n");
    const before = statSync(file);
    valueOf(await updateKitchen(folder, done));
    const bad = await updateKitchen(folder, () => failed("internal", { what: "x" }));
    expect(codeOf(bad)).toBe("internal");
    expect(statSync(file)).toMatchObject({ ino: before.ino, mtimeMs: before.mtimeMs });
    expect(namesIn(folder)).toEqual(["kitchen.yaml"]);
  });

  it.each([
    ["saved in place", (file: string) => writeFileSync(file, "a: editor\n")],
    [
      "saved by renaming",
      (file: string) => {
        writeFileSync(`${file}~`, "a: editor\n");
        renameSync(`${file}~`, file);
      },
    ],
  ])("is refused where an editor has %s meanwhile, and what it saved stays", async (_, save) => {
    const { folder, file } = kitchen("a: 1\n");
    const outcome = await updateKitchen(folder, (text) => {
      save(file);
      return done(`${text}b: 2\n`);
    });
    expect(codeOf(outcome)).toBe("kitchen-changed-meanwhile");
    expect(read(file)).toBe("a: editor\n");
    expect(namesIn(folder)).toEqual(["kitchen.yaml"]);
  });

  it("is refused while another holds the folder, and where there is no kitchen", async () => {
    const { folder, file } = kitchen("a: 1\n");
    plant(folder, newRecord());
    expect(codeOf(await updateKitchen(folder, append("b\n"), { patience: 50 }))).toBe(
      "kitchen-locked",
    );
    expect(read(file)).toBe("a: 1\n");
    const empty = temporaryFolder();
    expect(codeOf(await updateKitchen(empty, append("b\n")))).toBe("kitchen-missing");
    expect(namesIn(empty)).toEqual([]);
  });

  it("is refused where kitchen.yaml is a link to outside", async () => {
    const elsewhere = kitchen("a: 1\n");
    const folder = temporaryFolder();
    symlinkSync(elsewhere.file, join(folder, "kitchen.yaml"));
    expect(codeOf(await updateKitchen(folder, append("b\n")))).toBe("path-leaves-folder");
    expect(read(elsewhere.file)).toBe("a: 1\n");
  });

  it("loses no update of 8 processes that make 25 each at once", async () => {
    const folder = temporaryFolder();
    startFolder(folder);
    const bundle = await bundleWorker(temporaryFolder());
    const workers = Array.from({ length: 8 }, () => startWorker(bundle, ["updates", folder, "25"]));
    const ended = await Promise.all(workers.map((one) => one.ended));
    const lines = ended.flatMap((one) => one.lines).filter((line) => line !== "ready");
    const expected = Array.from({ length: 200 }, (_, at) => `version ${at + 1}`);
    expect(new Set(lines)).toEqual(new Set(expected));
    expect(lines).toHaveLength(200);
    expect(versionOf(read(join(folder, "kitchen.yaml")))).toBe(200);
    expect(versionOf(read(join(folder, "kitchen.previous.yaml")))).toBe(199);
    expect(namesIn(folder).filter((name) => name.startsWith("."))).toEqual([]);
  });

  it("leaves everything whole when killed at any instant (20 here, more by npm run bench:kill)", async () => {
    const bundle = await bundleWorker(temporaryFolder());
    const counts = await killRounds(bundle, join(temporaryFolder(), "kitchen"), 20);
    expect(counts.faults).toEqual([]);
    expect(counts.kills).toBeGreaterThanOrEqual(20);
    // Had no kill met a write, this would have shown nothing.
    expect(counts.lockedKills + counts.partKills).toBeGreaterThan(0);
  });
});
