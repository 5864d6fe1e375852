import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { batchList, numbered } from "../../../src/cli/kitchen/batch-list.ts";
import type { Batch } from "../../../src/kitchen/kitchen.ts";
import { batch } from "../../advice/constructed-batches.ts";

// Constructed logs.
const plain = (more: Partial<Batch> = {}): Batch =>
  batch({ culture: "reuteri", separated: null, generation: null, ...more });
const page = (width: number, unit: "degC" | "degF" = "degC", ascii = false) => ({
  width,
  unit,
  ascii,
});
const lines = (batches: readonly Batch[], ...said: Parameters<typeof page>): readonly string[] =>
  batchList(numbered({ batches }), page(...said));

const full = plain({
  date: "2026-05-09",
  milk: "thin",
  heated: false,
  generation: 2,
  starter: 0.025,
  hours: 36.5,
  separated: "a little",
  sourness: "sharp",
  trouble: ["pink", "fuzzy"],
  moved: true,
  notes: "lid off",
});

describe("numbered", () => {
  it("numbers by the log's order and shows by the day, the newest last", () => {
    const dates = ["2026-05-09", "2025-12-31", "2026-05-09", "2026-01-01"];
    const found = numbered({ batches: dates.map((date) => plain({ date })) });
    expect(found.map(({ number, batch: { date } }) => [number, date])).toEqual([
      [2, "2025-12-31"],
      [4, "2026-01-01"],
      [1, "2026-05-09"],
      [3, "2026-05-09"],
    ]);
  });
});

describe("batchList", () => {
  it("puts what was said into a last column where there is room", () => {
    expect(lines([full, plain()], 120)).toEqual([
      "no.  set on      culture  set-up              gen.  separated",
      "2    2026-05-01  reuteri  cooker 38 °C, jars  -     -",
      "1    2026-05-09  reuteri  cooker 38 °C, jars  2     a little   trouble: pink, fuzzy; 36.5 h; thin milk; not heated;",
      "                                                               starter 2.5 %; sourness sharp; moved while it set; lid",
      "                                                               off",
    ]);
  });

  it("puts it below the row where there is less", () => {
    expect(lines([full, plain()], 66)).toEqual([
      "no.  set on      culture  set-up              gen.  separated",
      "2    2026-05-01  reuteri  cooker 38 °C, jars  -     -",
      "1    2026-05-09  reuteri  cooker 38 °C, jars  2     a little",
      "     trouble: pink, fuzzy; 36.5 h; thin milk; not heated; starter",
      "     2.5 %; sourness sharp; moved while it set; lid off",
    ]);
  });

  it("is a list where the table itself would be too wide", () => {
    expect(lines([full], 40)).toEqual([
      "1  2026-05-09 reuteri; cooker 38 °C,",
      "   jars; generation 2; separated: a",
      "   little; trouble: pink, fuzzy; 36.5 h;",
      "   thin milk; not heated; starter 2.5 %;",
      "   sourness sharp; moved while it set;",
      "   lid off",
    ]);
  });

  it.each([
    [{ kind: "step", celsius: 100 / 1.8 - 32 / 1.8 }, "cooker 100 °F, jars"],
    [{ kind: "program", program: "warm" }, "cooker warm, jars"],
    [{ kind: "mark", mark: "3" }, "cooker mark 3, jars"],
    [{ kind: "fixed" }, "cooker, jars"],
  ] as const)("names the setting %j", (setting, says) => {
    expect(lines([plain({ setting })], 100, "degF")[1]).toContain(`  ${says}  `);
  });

  it("stays within its width, and in ASCII where it must", () => {
    const notes = "süß ".repeat(30).trim();
    fc.assert(
      fc.property(fc.integer({ min: 40, max: 120 }), fc.boolean(), (width, ascii) => {
        const shown = lines([full, plain({ notes }), plain()], width, "degC", ascii);
        for (const line of shown) expect([...line].length).toBeLessThanOrEqual(width);
        if (ascii) expect(shown.join("")).toMatch(/^[ -~]*$/);
      }),
    );
  });
});
