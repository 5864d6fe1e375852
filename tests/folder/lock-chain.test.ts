import { readFileSync } from "node:fs";
import files from "node:fs/promises";
import { syncBuiltinESMExports } from "node:module";
import { basename, join } from "node:path";
import { describe, expect, it, onTestFinished, vi } from "vitest";
import { readChain, releaseLock, takeLock } from "../../src/folder/lock-chain.ts";
import { deadRecord, plant } from "./dead-lock.ts";
import { namesIn, temporaryFolder, write } from "./temporary-folder.ts";

const taken = async (folder: string) => {
  const held = await takeLock(folder, await readChain(folder));
  if (held === null) throw new Error("not taken");
  return held;
};

describe("the lock as a chain", () => {
  it("is one file, and nothing after the release", async () => {
    const folder = temporaryFolder();
    expect(await readChain(folder)).toEqual([]);
    const held = await taken(folder);
    expect(namesIn(folder)).toEqual([".holdband-lock"]);
    await releaseLock(folder, held);
    expect(namesIn(folder)).toEqual([]);
  });

  it("follows the dead without removing them, however many", async () => {
    const folder = temporaryFolder();
    const dead = [deadRecord(), deadRecord(), deadRecord()] as const;
    plant(folder, dead[0]);
    plant(folder, dead[1], `.holdband-lock.1.${dead[0].token}`);
    plant(folder, dead[2], `.holdband-lock.2.${dead[1].token}`);
    const held = await taken(folder);
    const chain = await readChain(folder);
    expect(chain.map(({ record }) => record?.pid)).toEqual([
      ...dead.map(({ pid }) => pid),
      process.pid,
    ]);
    await releaseLock(folder, held);
    expect(namesIn(folder)).toEqual([]);
  });

  it("lets one of many follow the same dead lock", async () => {
    const folder = temporaryFolder();
    plant(folder, deadRecord());
    const chain = await readChain(folder);
    const all = await Promise.all(Array.from({ length: 30 }, () => takeLock(folder, chain)));
    expect(all.filter((one) => one !== null)).toHaveLength(1);
    expect(namesIn(folder)).toHaveLength(2);
  });

  it("lets one of many have a free lock", async () => {
    const folder = temporaryFolder();
    const all = await Promise.all(Array.from({ length: 30 }, () => takeLock(folder, [])));
    expect(all.filter((one) => one !== null)).toHaveLength(1);
  });

  // The races below are constructed step by step: each `late` has looked at the
  // folder, found a dead owner, and acts only after the others have gone on.
  it("gives nothing to one who saw the dead, but came after its follower had gone", async () => {
    const folder = temporaryFolder();
    plant(folder, deadRecord());
    const late = await readChain(folder);
    await releaseLock(folder, await taken(folder));
    expect(await takeLock(folder, late)).toBeNull();
    expect(namesIn(folder)).toEqual([]);
  });

  it("never touches the live lock that came in place of the dead one", async () => {
    const folder = temporaryFolder();
    plant(folder, deadRecord());
    const late = await readChain(folder);
    await releaseLock(folder, await taken(folder));
    const live = await taken(folder);
    const before = readFileSync(join(folder, ".holdband-lock"), "utf8");
    expect(await takeLock(folder, late)).toBeNull();
    expect(readFileSync(join(folder, ".holdband-lock"), "utf8")).toBe(before);
    expect((await readChain(folder)).map(({ token }) => token)).toEqual([live[0]?.token]);
  });

  it("is not released by one whom others held for dead", async () => {
    const folder = temporaryFolder();
    const slow = await taken(folder);
    const other = await takeLock(folder, await readChain(folder));
    const before = namesIn(folder);
    await releaseLock(folder, slow);
    expect(namesIn(folder)).toEqual(before);
    await releaseLock(folder, other ?? []);
    expect(namesIn(folder)).toEqual([]);
  });

  it("goes first file first, or others would find a part of the chain to follow", async () => {
    const folder = temporaryFolder();
    const [one, two] = [deadRecord(), deadRecord()] as const;
    plant(folder, one);
    plant(folder, two, `.holdband-lock.1.${one.token}`);
    const held = await taken(folder);
    const removed = vi.spyOn(files, "rm");
    syncBuiltinESMExports();
    onTestFinished(() => {
      removed.mockRestore();
      syncBuiltinESMExports();
    });
    await releaseLock(folder, held);
    const names = removed.mock.calls.map(([path]) => basename(String(path)));
    expect(names.filter((name) => name.startsWith(".holdband-lock"))).toEqual([
      ".holdband-lock",
      `.holdband-lock.1.${one.token}`,
      `.holdband-lock.2.${two.token}`,
      `.holdband-lock.3.${held.at(-1)?.token}`,
    ]);
  });

  it("sweeps up successors of locks long gone, once it is taken anew", async () => {
    const folder = temporaryFolder();
    plant(folder, deadRecord(), ".holdband-lock.1.0123456789abcdef");
    write(folder, "notes.txt", "x");
    await taken(folder);
    expect(namesIn(folder)).toEqual([".holdband-lock", "notes.txt"]);
  });

  it("comes to an end where a lock file cannot be read", async () => {
    const folder = temporaryFolder();
    write(folder, ".holdband-lock", "");
    write(folder, ".holdband-lock.1.unreadable", "");
    expect(await readChain(folder)).toHaveLength(2);
    await releaseLock(folder, await taken(folder));
    expect(namesIn(folder)).toEqual([]);
  });
});
