import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { createRecordSplitter } from "../../../src/readings/text/record-splitter.ts";

const blocks = (text: string, chunk: number): string => {
  const splitter = createRecordSplitter(",");
  let joined = "";
  for (let at = 0; at < text.length; at += chunk)
    joined += splitter.push(text.slice(at, at + chunk));
  return joined + splitter.end();
};

describe("createRecordSplitter", () => {
  it("gives whole records only", () => {
    const splitter = createRecordSplitter(",");
    expect(splitter.push("a,b\nc")).toBe("a,b\n");
    expect(splitter.push(',"d\n')).toBe("");
    expect(splitter.push('e"\nf')).toBe('c,"d\ne"\n');
    expect(splitter.end()).toBe("f\n");
  });

  it("makes a quote that is never closed plain text, on its own line only", () => {
    expect(blocks('a,"b\n1,2\n3,4\n', 3)).toBe('a, "b\n1,2\n3,4\n');
  });

  it("gives up on a quote after twenty lines", () => {
    const rows = "1,2\n".repeat(40);
    expect(blocks(`a,"b\n${rows}c"\n`, 1000).startsWith('a, "b\n1,2\n')).toBe(true);
  });

  it("gives the same whatever the pieces (property)", () => {
    const sign = fc.constantFrom("a", ",", '"', "\n", "\r", "\r\n", "1", " ");
    fc.assert(
      fc.property(
        fc.array(sign, { maxLength: 60 }),
        fc.integer({ min: 1, max: 9 }),
        (signs, chunk) => {
          const text = signs.join("");
          expect(blocks(text, chunk)).toBe(blocks(text, 1000));
        },
      ),
    );
  });

  it("keeps every line (property)", () => {
    const sign = fc.constantFrom("a", ",", '"', "\n", "\r\n", " ");
    fc.assert(
      fc.property(fc.array(sign, { maxLength: 60 }), (signs) => {
        const text = signs.join("");
        const wanted = text.split(/\r?\n/u).length - (text.endsWith("\n") || text === "" ? 1 : 0);
        expect(blocks(text, 4).split("\n").length - 1).toBe(wanted);
      }),
    );
  });
});
