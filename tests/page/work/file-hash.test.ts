import { createHash } from "node:crypto";
import { describe, expect, it } from "vitest";
import { bytesHash, bytesOf, fileHash, largestFile } from "../../../src/page/work/file-hash.ts";

const bytes = (text: string): Uint8Array<ArrayBuffer> =>
  new Uint8Array(new TextEncoder().encode(text));

// Digests of FIPS 180-4's examples as NIST prints them (Secure Hash Standard, example values, SHA-256).
const printed = [
  ["abc", "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"],
  [
    "abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq",
    "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1",
  ],
] as const;

/** A file that says it is of some size, without the bytes. */
const sized = (size: number): Blob =>
  Object.defineProperty(new Blob(["x"]), "size", { value: size });

/** A file whose bytes the browser refuses. */
const refusing = (name: string): Blob =>
  Object.assign(new Blob(["x"]), {
    arrayBuffer: () => Promise.reject(new DOMException("no", name)),
  });

describe("SHA-256 of a file", () => {
  it.each(printed)("of %j is what the standard prints", async (text, digest) => {
    expect(await bytesHash(bytes(text), "a.csv")).toEqual({ ok: true, value: digest });
  });

  it("is that of Node's own implementation, zeros at the front of a byte included", async () => {
    const long = new Uint8Array(100_000).map((_, at) => (at * 31) % 251);
    const wanted = createHash("sha256").update(long).digest("hex");
    expect(await fileHash(new Blob([long]), "a.csv")).toEqual({ ok: true, value: wanted });
  });

  it("is made once for one file", async () => {
    let asked = 0;
    const blob = Object.assign(new Blob([]), {
      arrayBuffer: async () => {
        asked += 1;
        return bytes("abc").buffer;
      },
    });
    await fileHash(blob, "a.csv");
    expect(await fileHash(blob, "a.csv")).toEqual({ ok: true, value: printed[0][1] });
    expect(asked).toBe(1);
  });

  it("says so where the browser has none", async () => {
    const outcome = await bytesHash(bytes("abc"), "a.csv", null);
    expect(outcome).toMatchObject({ ok: false, problem: { code: "file-unreadable" } });
  });
});

describe("bytes of a file", () => {
  it("are refused where they would not fit into memory", async () => {
    const outcome = await bytesOf(sized(largestFile + 1), "long.csv");
    expect(outcome).toMatchObject({
      ok: false,
      problem: { code: "file-unreadable", facts: { file: "long.csv" } },
    });
  });

  it.each(["NotFoundError", "NotReadableError"])("give a problem on %s", async (name) => {
    const outcome = await bytesOf(refusing(name), "a.csv");
    expect(outcome).toMatchObject({ ok: false, problem: { code: "file-unreadable" } });
  });
});
