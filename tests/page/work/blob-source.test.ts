import { createHash } from "node:crypto";
import { describe, expect, it } from "vitest";
import { openBlob } from "../../../src/page/work/blob-source.ts";

const opened = async (content: Blob, onBytes: (count: number) => void = () => undefined) => {
  const source = await openBlob(content, "night.csv", onBytes);
  if (!source.ok) throw new Error(source.problem.code);
  return source.value;
};

describe("a file as a source of bytes", () => {
  it("streams all of it, counts it, and knows its hash beforehand", async () => {
    const bytes = new Uint8Array(300_000).map((_, at) => at % 253);
    let counted = 0;
    const source = await opened(new Blob([bytes]), (count) => {
      counted += count;
    });
    expect(source.sha256()).toBe(createHash("sha256").update(bytes).digest("hex"));
    const parts: Uint8Array[] = [];
    for await (const part of source.chunks) parts.push(part);
    expect(Buffer.concat(parts).equals(bytes)).toBe(true);
    expect(counted).toBe(bytes.length);
    expect(source.bytes).toBe(bytes.length);
    expect(source.broken()).toBeNull();
  });

  it("fails where there is nothing in it", async () => {
    const outcome = await openBlob(new Blob([]), "empty.csv", () => undefined);
    expect(outcome).toEqual({
      ok: false,
      problem: { code: "file-empty", facts: { file: "empty.csv" } },
    });
  });

  it("knows why reading broke off: the file was changed under it", async () => {
    const content = Object.assign(new Blob(["Time,Jar\n"]), {
      stream: () =>
        new ReadableStream({
          pull: (controller) => controller.error(new DOMException("gone", "NotReadableError")),
        }),
    });
    const source = await opened(content);
    const readAll = async () => {
      for await (const part of source.chunks) expect(part).toBeDefined();
    };
    await expect(readAll()).rejects.toThrow();
    expect(source.broken()).toEqual({
      code: "file-changed-meanwhile",
      facts: { file: "night.csv" },
    });
  });

  it("lets go of the file where the reader stops early", async () => {
    let cancelled = false;
    const content = Object.assign(new Blob(["x"]), {
      stream: () =>
        new ReadableStream({
          pull: (controller) => controller.enqueue(new Uint8Array(10)),
          cancel: () => {
            cancelled = true;
          },
        }),
    });
    const source = await opened(content);
    for await (const part of source.chunks) if (part.length > 0) break;
    expect(cancelled).toBe(true);
  });
});
