import { describe, expect, it } from "vitest";
import { isUsual, separatedLater, separatedTwice } from "../../src/advice/separation-due.ts";
import type { Batch } from "../../src/kitchen/kitchen.ts";
import { batch } from "./constructed-batches.ts";

// Constructed logs; the rules are those of the project's own design (common practice, no source).

const on = (date: string, more: Partial<Batch> = {}): Batch =>
  batch({ date, separated: "much", ...more });

describe("separation of the first generation", () => {
  it.each([
    [1, "a little", true],
    [1, "much", true],
    [1, "none", false],
    [1, null, false],
    [2, "much", false],
    [null, "much", false],
  ] as const)("generation %s, %s: usual %s", (generation, separated, usual) => {
    expect(isUsual({ generation, separated })).toBe(usual);
  });
});

describe("separation from the second generation on", () => {
  it.each([
    [2, "a little"],
    [7, "much"],
    [null, "a little"],
  ] as const)("generation %s, %s: due, with its date", (generation, separated) => {
    expect(separatedLater([on("2026-05-01", { generation, separated })], null)).toEqual([
      { code: "separated-later", generation, date: "2026-05-01" },
    ]);
  });

  it.each([{ generation: 1 }, { separated: "none" as const }, { separated: null }])(
    "not %j",
    (more) => expect(separatedLater([on("2026-05-01", more)], null)).toEqual([]),
  );

  it("tells of the newest, in whatever order the log is", () => {
    const log = [
      on("2026-05-09", { generation: 3 }),
      on("2026-05-20", { generation: 4, separated: "none" }),
      on("2026-05-01", { generation: 2 }),
    ];
    expect(separatedLater(log, null)).toMatchObject([{ generation: 3, date: "2026-05-09" }]);
  });

  it.each([
    ["2025-12-30", 1],
    ["2025-12-31", 1],
    ["2026-01-01", 0],
  ])("with a test of %s beside a batch of 2025-12-31: %i reasons", (lastTested, count) => {
    expect(separatedLater([on("2025-12-31")], lastTested)).toHaveLength(count);
  });
});

const log = (...separated: readonly (Batch["separated"] | "fresh")[]): readonly Batch[] =>
  separated.map((one, at) =>
    on(`2026-05-0${at + 1}`, {
      generation: one === "fresh" ? 1 : 3,
      separated: one === "fresh" ? "much" : one,
    }),
  );

describe("separation twice in three", () => {
  it.each([
    [log("much"), null],
    [log("much", "none", "none"), null],
    [log("much", "a little", "none", "none"), null],
    [log("much", "none", "a little"), { separated: 2, of: 3 }],
    [log("much", "much"), { separated: 2, of: 2 }],
    [log("none", "much", "much", "much"), { separated: 3, of: 3 }],
    // The first generation is not counted, neither for nor against.
    [log("much", "fresh"), null],
    [log("much", "fresh", "much"), { separated: 2, of: 2 }],
    // Nor is a batch of which nobody said.
    [log("much", null, null, "much"), { separated: 2, of: 2 }],
  ])("log %#", (batches, found) => {
    const reasons = found === null ? [] : [{ code: "two-in-three", ...found }];
    expect(separatedTwice(batches, null)).toEqual(reasons);
  });

  it("counts a generation nobody said", () => {
    const unsaid = log("much", "much").map((one) => Object.assign({}, one, { generation: null }));
    expect(separatedTwice(unsaid, null)).toHaveLength(1);
  });

  it("counts each culture by itself", () => {
    const [first, second] = log("much", "much") as readonly [Batch, Batch];
    expect(separatedTwice([first, { ...second, culture: "other" }], null)).toEqual([]);
  });

  it.each([
    ["2026-05-03", 1],
    ["2026-05-04", 0],
  ])("with a test of %s beside 2026-05-01 and -03: %i reasons", (lastTested, count) => {
    expect(separatedTwice(log("much", "none", "much"), lastTested)).toHaveLength(count);
  });
});
