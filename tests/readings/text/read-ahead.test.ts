import { describe, expect, it } from "vitest";
import { openText } from "../../../src/readings/text/read-ahead.ts";
import { encode, sourceOf } from "../reading-helpers.ts";

const opened = async (bytes: Uint8Array, chunk: number, seen: number[] = []) => {
  const outcome = await openText(sourceOf(bytes, chunk), { onProgress: (read) => seen.push(read) });
  if (!outcome.ok) return outcome.problem;
  let whole = "";
  for await (const piece of outcome.value.pieces) whole += piece;
  return { head: outcome.value.head, whole, encoding: outcome.value.encoding() };
};

describe("openText", () => {
  it("gives a short file whole, and tells of progress", async () => {
    const seen: number[] = [];
    const text = "22:00,21.5\n22:30,41";
    expect(await opened(encode(text, "utf-16le"), 5, seen)).toEqual({
      head: text,
      whole: text,
      encoding: "utf-16le",
    });
    expect(seen.at(-1)).toBe(2 * text.length + 2);
  });

  it("ends the head of a long file at a line's end, and gives all of it", async () => {
    const text = "22:00:00,21.5\n".repeat(40_000);
    const found = await opened(encode(text, "utf-8"), 10_007);
    expect(found).toMatchObject({ whole: text });
    expect("head" in found && found.head.length < text.length && found.head.endsWith("\n")).toBe(
      true,
    );
  });

  it.each([
    ["", "file-empty"],
    [" \r\n\n", "file-empty"],
    ["PK\u0003\u0004....", "file-binary"],
  ])("%j: %s", async (text, code) => {
    expect(await opened(encode(text, "utf-8"), 100)).toMatchObject({ code });
  });
});
