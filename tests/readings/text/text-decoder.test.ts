import { describe, expect, it } from "vitest";
import { guessEncoding } from "../../../src/readings/text/encoding.ts";
import { createTextReader } from "../../../src/readings/text/text-decoder.ts";
import { encode } from "../reading-helpers.ts";
import type { TextEncoding } from "../reading-helpers.ts";

const text = "Température;°C\n22:00;21,5\n";
const decoded = (bytes: Uint8Array, chunk: number) => {
  const reader = createTextReader(guessEncoding(bytes));
  let found = "";
  for (let at = 0; at < bytes.length; at += chunk)
    found += reader.decode(bytes.subarray(at, at + chunk));
  return { found: found + reader.end(), encoding: reader.encoding() };
};

describe("createTextReader", () => {
  it.each(["utf-8", "utf-8-bom", "utf-16le", "utf-16be"] as const)(
    "%s in any pieces",
    (encoding) => {
      for (const chunk of [1, 2, 3, 5, 1000])
        expect(decoded(encode(text, encoding), chunk).found).toBe(text);
    },
  );

  it.each([
    ["utf-8", "utf-8"],
    ["windows-1252", "windows-1252"],
  ] as [TextEncoding, string][])("tells %s by its first byte above ASCII", (written, encoding) => {
    expect(decoded(encode(text, written), 1000)).toEqual({ found: text, encoding });
  });

  it("decides late: the first degree sign after much ASCII", () => {
    const late = encode(`${"22:00,21.5\n".repeat(50)}22:30,41.2\u00b0C\n`, "windows-1252");
    expect(decoded(late, 100).encoding).toBe("windows-1252");
    expect(decoded(late, 100).found.endsWith("41.2°C\n")).toBe(true);
  });

  it("calls pure ASCII UTF-8", () => {
    expect(decoded(encode("a,b\n", "utf-8"), 1).encoding).toBe("utf-8");
  });
});
