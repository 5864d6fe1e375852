import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { outcomeOf, read, setAsideTotal } from "./reading-helpers.ts";
import { anyTable, optionsFor, writeTable } from "./round-trip.ts";

describe("any table in any dialect", () => {
  it("reads back as it was written", async () => {
    await fc.assert(
      fc.asyncProperty(anyTable, fc.integer({ min: 3, max: 400 }), async (table, chunk) => {
        const file = await read(writeTable(table), optionsFor(table), chunk);
        expect(file.probes.map(({ name }) => name)).toEqual(
          table.celsius.map((_, at) => `T${at + 1}`),
        );
        for (const [at, { celsius, minutes }] of file.probes.entries()) {
          const written = table.celsius[at]!;
          expect(celsius.length).toBe(written.length);
          for (const [row, value] of written.entries()) {
            // Two printed decimals: half a step in degF is 0.0028 degC.
            expect(Math.abs(celsius[row]! - value)).toBeLessThan(0.003);
            expect(minutes[row]).toBeCloseTo((row * table.stepSeconds) / 60, 6);
          }
        }
        expect(file.rowsUsed).toBe(table.celsius[0]!.length);
        expect(file.rowsRead).toBe(file.rowsUsed + setAsideTotal(file));
        expect(file.delimiter).toBe(table.delimiter);
        expect(file.unit).toBe(table.degF ? "degF" : "degC");
      }),
      { numRuns: 250 },
    );
  }, 120_000);
});

/** Damage to one line: a byte changed, cut off, doubled, emptied, cells dropped. */
const damage = fc.record({
  line: fc.nat(60),
  at: fc.nat(60),
  kind: fc.constantFrom("sign", "cut", "twice", "blank", "empty cell", "quote", "word"),
  sign: fc.constantFrom("x", "9", "-", " ", ".", ",", ";", "\t", ":", "\uFFFD", "\0", "C", "F"),
});
type Damage = typeof damage extends fc.Arbitrary<infer Kind> ? Kind : never;

const damaged = (line: string, { at, kind, sign }: Damage): string[] => {
  const place = at % (line.length + 1);
  if (kind === "sign") return [line.slice(0, place) + sign + line.slice(place + 1)];
  if (kind === "cut") return [line.slice(0, place)];
  if (kind === "twice") return [line, line];
  if (kind === "blank") return [line, ""];
  if (kind === "quote") return [`${line.slice(0, place)}"${line.slice(place)}`];
  if (kind === "word") return [line, "battery low"];
  return [line.replace(/\d+[.,]\d+/u, "")];
};

describe("a damaged file", () => {
  it("is read with every row used or counted, or refused with a code", async () => {
    const damages = fc.array(damage, { minLength: 1, maxLength: 12 });
    await fc.assert(
      fc.asyncProperty(anyTable, damages, async (table, harm) => {
        const plain = { ...table, encoding: "utf-8", lineEnd: "\n" } as const;
        let lines = new TextDecoder().decode(writeTable(plain)).split("\n");
        for (const item of harm) {
          const index = item.line % lines.length;
          lines = lines.flatMap((line, at) => (at === index ? damaged(line, item) : [line]));
        }
        const text = lines.join("\n");
        const outcome = await outcomeOf(text, optionsFor(table), 97);
        if (!outcome.ok) return;
        const file = outcome.value;
        expect(file.rowsRead).toBe(file.rowsUsed + setAsideTotal(file));
        // Nothing is lost: every line that is not blank, below the heading and its units, is a row, unless quoted line ends join some.
        if (!text.includes('"')) {
          const below = text
            .split("\n")
            .slice(file.headerLine ?? 0)
            .filter((line) => line.trim() !== "");
          expect(below.length - file.rowsRead).toBeOneOf(file.headerLine === null ? [0] : [0, 1]);
        }
        for (const { minutes, celsius } of file.probes) {
          expect(celsius.length).toBe(minutes.length);
          expect(celsius.every(Number.isFinite)).toBe(true);
          for (let row = 1; row < minutes.length; row += 1)
            expect(minutes[row]! > minutes[row - 1]!).toBe(true);
        }
        for (const { firstLine } of [...file.setAside, ...file.cellsSetAside]) {
          expect(firstLine).toBeGreaterThan(file.headerLine ?? 0);
          expect(firstLine).toBeLessThanOrEqual(lines.length);
        }
      }),
      { numRuns: 500 },
    );
  }, 120_000);
});
