import { describe, expect, it } from "vitest";
import { pipedText } from "../../../src/cli/enter/piped-input.ts";
import { encode } from "../../readings/reading-helpers.ts";

const inParts = async function* (bytes: Uint8Array, size: number): AsyncGenerator<Uint8Array> {
  for (let at = 0; at < bytes.length; at += size) yield bytes.subarray(at, at + size);
};

const endless = async function* (): AsyncGenerator<Uint8Array> {
  for (;;) yield new Uint8Array(100_000);
};

const broken = async function* (): AsyncGenerator<Uint8Array> {
  yield new Uint8Array(1);
  throw Object.assign(new Error("gone"), { code: "EIO" });
};

describe("pipedText", () => {
  it("joins the parts, also in the middle of a sign, and reads UTF-16 with its mark", async () => {
    const text = "22:30 41.2 # Glas öffnen\n";
    expect(await pipedText(inParts(encode(text, "utf-8"), 3))).toEqual({ ok: true, value: text });
    expect(await pipedText(inParts(encode(text, "utf-16le"), 5))).toEqual({
      ok: true,
      value: text,
    });
  });

  it("stops at what no hand has typed", async () => {
    expect((await pipedText(endless())).ok).toBe(false);
  });

  it("tells of an input that breaks off", async () => {
    expect(await pipedText(broken())).toMatchObject({
      ok: false,
      problem: { code: "file-unreadable", facts: { why: "the disk reports an error" } },
    });
  });
});
