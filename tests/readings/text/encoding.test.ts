import { describe, expect, it } from "vitest";
import { guessEncoding } from "../../../src/readings/text/encoding.ts";
import { encode } from "../reading-helpers.ts";

// Byte order marks: Unicode Standard, section 23.8. Signatures of the binary kinds: their format descriptions.
describe("guessEncoding", () => {
  const rows = "22:00,21.5\n".repeat(40);
  it.each([
    ["utf-8-bom", "utf-8", 3],
    ["utf-16le", "utf-16le", 2],
    ["utf-16be", "utf-16be", 2],
    ["utf-16le-bare", "utf-16le", 0],
  ] as const)("knows %s", (written, encoding, markLength) => {
    expect(guessEncoding(encode(rows, written))).toEqual({ kind: "known", encoding, markLength });
  });

  it("leaves ASCII and single bytes above it open", () => {
    expect(guessEncoding(encode(rows, "utf-8")).kind).toBe("ascii-so-far");
    expect(guessEncoding(encode("22:00,21.5\u00b0C\n", "windows-1252")).kind).toBe("ascii-so-far");
  });

  it.each([
    ["a ZIP archive (spreadsheet)", [0x50, 0x4b, 0x03, 0x04, 0x14, 0x00]],
    ["a PDF", [0x25, 0x50, 0x44, 0x46, 0x2d, 0x31]],
    ["control bytes", [0x41, 0x01, 0x02, 0x03, 0x04, 0x05, 0x0e, 0x0f]],
    ["zeros", Array.from({ length: 64 }, () => 0)],
  ])("refuses %s", (_, bytes) => {
    expect(guessEncoding(Uint8Array.from(bytes))).toEqual({ kind: "binary" });
  });

  it("bears a block of zeros from a power cut", () => {
    expect(guessEncoding(encode(`${rows}\0\0\0\0${rows}`, "utf-8")).kind).toBe("ascii-so-far");
  });
});
