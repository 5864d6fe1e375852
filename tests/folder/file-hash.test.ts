import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { fileHash } from "../../src/folder/file-hash.ts";
import { temporaryFolder, write } from "./temporary-folder.ts";

describe("fileHash", () => {
  // NIST's example values for SHA-256 (FIPS 180-4): one block, and a million times "a".
  it.each([
    ["abc", "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"],
    ["a".repeat(1_000_000), "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0"],
  ])("is SHA-256", async (text, hash) => {
    expect(await fileHash(write(temporaryFolder(), "a", text))).toBe(hash);
  });

  it("takes a file of several parts", async () => {
    // The hash of nothing but zeros shows a part read twice or not at all.
    const one = write(temporaryFolder(), "a", Buffer.alloc(3_000_000, 1));
    const other = write(temporaryFolder(), "a", Buffer.alloc(3_000_001, 1));
    expect(await fileHash(one)).not.toBe(await fileHash(other));
  });

  it("throws where there is no file", async () => {
    await expect(fileHash(join(temporaryFolder(), "none"))).rejects.toThrow("ENOENT");
  });
});
