/** Against Node's own `Buffer`, which csv-parse is written for. */
import { Buffer as NodeBuffer } from "node:buffer";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import fc from "fast-check";
import { beforeAll, describe, expect, it } from "vitest";
import { Buffer } from "../../../src/page/work/buffer.ts";

const root = fileURLToPath(new URL("../../../", import.meta.url));

// "binary" gives lone surrogates too, which UTF-8 has no bytes for.
const text = fc.oneof(fc.string({ unit: "grapheme" }), fc.string({ unit: "binary" }));
const long = text.map((one) => one.repeat(20));
const bytes = fc.uint8Array({ maxLength: 100 });
const part = fc.tuple(fc.nat(100), fc.nat(100)).map(([a, b]) => [Math.min(a, b), Math.max(a, b)]);

const octets = (value: Uint8Array): readonly number[] => Array.from(value);

describe("Buffer for a page", () => {
  it("makes the same bytes of text", () => {
    fc.assert(
      fc.property(fc.oneof(text, long), (value) => {
        expect(octets(Buffer.from(value))).toEqual(octets(NodeBuffer.from(value)));
      }),
    );
  });

  it("makes the same text of bytes, and of a part of them, whatever they are", () => {
    fc.assert(
      fc.property(bytes, part, (value, [from = 0, to = 0]) => {
        const [ours, nodes] = [Buffer.from(value), NodeBuffer.from(value)];
        const end = Math.min(to, value.length);
        expect(ours.toString("utf8", from, end)).toBe(nodes.toString("utf8", from, end));
        expect(ours.toString()).toBe(nodes.toString());
      }),
    );
  });

  it("keeps a byte order mark, as Node does", () => {
    const marked = [239, 187, 191, 51, 56];
    expect(Buffer.from(marked).toString()).toBe(NodeBuffer.from(marked).toString());
  });

  it("parts, copies, joins and compares alike", () => {
    fc.assert(
      fc.property(bytes, bytes, part, (one, other, ends) => {
        const [from = 0, to = 0] = ends.map((end) => Math.min(end, one.length));
        const [ours, nodes] = [Buffer.from(one), NodeBuffer.from(one)];
        const [next, nodesNext] = [Buffer.from(other), NodeBuffer.from(other)];
        expect(octets(ours.slice(from, to))).toEqual(octets(nodes.subarray(from, to)));
        const joined = NodeBuffer.concat([nodes, nodesNext]);
        expect(octets(Buffer.concat([ours, next]))).toEqual(octets(joined));
        expect(ours.equals(next)).toBe(nodes.equals(nodesNext));
        expect(Math.sign(Buffer.compare(ours, next))).toBe(NodeBuffer.compare(nodes, nodesNext));
        const [into, nodesInto] = [Buffer.from(new Uint8Array(300)), NodeBuffer.alloc(300)];
        ours.copy(into, 100, from, to);
        nodes.copy(nodesInto, 100, from, to);
        expect(octets(into)).toEqual(octets(nodesInto));
      }),
    );
  });

  it("shares the bytes of a part, and knows its own", () => {
    const whole = Buffer.from("abc");
    whole.slice(1, 2)[0] = 120;
    expect(whole.toString()).toBe("axc");
    expect(Buffer.isBuffer(whole)).toBe(true);
    expect(Buffer.isBuffer(new Uint8Array(2))).toBe(false);
    expect(Buffer.isBuffer("ab")).toBe(false);
    expect(Buffer.allocUnsafe(9)).toHaveLength(9);
  });
});

describe("csv-parse with it", () => {
  type Parse = (text: string, options: object) => readonly (readonly string[])[];

  /** csv-parse as the page has it, and as Node has it. */
  const parseWith = async (inject: readonly string[]): Promise<Parse> => {
    const { outputFiles } = await build({
      absWorkingDir: root,
      stdin: { contents: 'export { parse } from "csv-parse/sync";', resolveDir: root },
      bundle: true,
      format: "esm",
      inject: [...inject],
      write: false,
    });
    const address = `data:text/javascript,${encodeURIComponent(outputFiles[0]?.text ?? "")}`;
    return ((await import(/* @vite-ignore */ address)) as { parse: Parse }).parse;
  };
  let ours: Parse;
  let nodes: Parse;
  beforeAll(async () => {
    [ours, nodes] = await Promise.all([parseWith(["src/page/work/buffer.ts"]), parseWith([])]);
  });

  it("reads a cell that goes on behind its quotes, for which bytes are put before others", () => {
    const options = { relax_column_count: true, relax_quotes: true, record_delimiter: "\n" };
    expect(ours('"38.1" ,"x"\n', options)).toEqual([['"38.1" ', "x"]]);
    expect(nodes('"38.1" ,"x"\n', options)).toEqual([['"38.1" ', "x"]]);
  });

  it("reads any table as it does in Node", () => {
    const cell = fc.oneof(fc.constantFrom('"', '""', "38.1", " ", "", "\ufeff", "°C"), text);
    const table = fc
      .array(fc.array(cell, { minLength: 1, maxLength: 5 }), { maxLength: 12 })
      .map((rows) => rows.map((cells) => cells.join(",")).join("\n"));
    // What src/readings/text/records.ts asks of it.
    const options = { relax_column_count: true, relax_quotes: true, record_delimiter: "\n" };
    const outcome = (parse: Parse, value: string): unknown => {
      try {
        return parse(value, options);
      } catch (error) {
        return (error as Error).message;
      }
    };
    fc.assert(
      fc.property(table, (value) => {
        expect(outcome(ours, value)).toEqual(outcome(nodes, value));
      }),
    );
  });
});
