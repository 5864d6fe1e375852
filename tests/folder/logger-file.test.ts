import { mkdirSync, rmSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { openLoggerFile } from "../../src/folder/logger-file.ts";
import { temporaryFolder, write } from "../cli/run-holdband.ts";

const ignore = (): void => undefined;

const codeFor = async (path: string): Promise<string> => {
  const opened = await openLoggerFile(path, ignore);
  return opened.ok ? "" : opened.problem.code;
};

describe("openLoggerFile", () => {
  it("gives the bytes and their SHA-256", async () => {
    // FIPS 180-4's one-block example: SHA-256 of "abc".
    const path = write(temporaryFolder(), "abc.csv", "abc");
    let counted = 0;
    const opened = await openLoggerFile(path, (count) => (counted += count));
    if (!opened.ok) throw new Error(opened.problem.code);
    const parts: Uint8Array[] = [];
    for await (const chunk of opened.value.chunks) parts.push(chunk);
    expect(Buffer.concat(parts).toString()).toBe("abc");
    expect(opened.value.sha256()).toBe(
      "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
    );
    expect(opened.value.sha256()).toHaveLength(64);
    expect(opened.value).toMatchObject({ name: "abc.csv", bytes: 3 });
    expect(counted).toBe(3);
    expect(opened.value.broken()).toBeNull();
  });

  it("says what stands in the way", async () => {
    const folder = temporaryFolder();
    mkdirSync(join(folder, "inner"));
    expect(await codeFor(join(folder, "no.csv"))).toBe("file-missing");
    expect(await codeFor(join(write(folder, "a.csv", "x"), "b.csv"))).toBe("file-missing");
    expect(await codeFor(join(folder, "inner"))).toBe("file-is-directory");
    expect(await codeFor(write(folder, "empty.csv", ""))).toBe("file-empty");
    expect(await codeFor(join(folder, "n".repeat(300)))).toBe("file-unreadable");
  });

  it("remembers why reading broke off", async () => {
    const path = write(temporaryFolder(), "gone.csv", "abc");
    const opened = await openLoggerFile(path, ignore);
    if (!opened.ok) throw new Error(opened.problem.code);
    rmSync(path);
    await expect(async () => {
      for await (const chunk of opened.value.chunks) ignore.call(chunk);
    }).rejects.toThrow();
    expect(opened.value.broken()?.code).toBe("file-unreadable");
  });
});
