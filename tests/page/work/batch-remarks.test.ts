import { removedBatchText } from "../../../src/input/kitchen/batch-edit.ts";
import { describe, expect, it } from "vitest";
import type { Batch } from "../../../src/kitchen/kitchen.ts";
import { batchRemarks, takenRemarks } from "../../../src/page/work/batch-remarks.ts";
import { kitchenOf, opener } from "../../kitchen-analysis/small-kitchen.ts";

const batch: Batch = {
  date: "2026-03-01",
  culture: "reuteri",
  appliance: "cooker",
  setting: { kind: "step", celsius: 38 },
  container: "jars",
  milk: null,
  heated: null,
  generation: null,
  starter: null,
  hours: null,
  separated: null,
  sourness: null,
  trouble: [],
  moved: null,
  notes: null,
};
const kitchen = kitchenOf([], { batches: [batch, { ...batch, date: "2026-03-05" }] });

const remarks = (changed: Partial<Batch>, taken: readonly string[] = []) =>
  batchRemarks(
    { ...kitchen, batches: [{ ...batch, ...changed }] },
    1,
    taken,
    "2026-03-06",
    opener({}),
  );

describe("what is said of a batch", () => {
  it("begins with what must be thrown away", async () => {
    const said = await remarks({ trouble: ["fuzzy"] }, ["Taken: this and that."]);
    expect(said[0]).toMatch(/^Fuzz: throw all of it away/);
    expect(said[1]).toBe("Taken: this and that.");
  });

  it("tells a test that is due, of a set-up that nobody tested", async () => {
    const [due] = await remarks({});
    expect(due).toMatch(/^Test .* once with water before the next batch: .* no water test of it/);
  });

  it("is nothing of a number that is not there", async () => {
    expect(await batchRemarks(kitchen, 7, [], "2026-03-06", opener({}))).toEqual([]);
  });
});

it("tells what was taken for a new one", () => {
  const [said] = takenRemarks(kitchen, { date: ["2026-03-07"], separated: ["none"] }, "2026-03-07");
  expect(said).toBe(
    "Taken: culture reuteri, the only one here; appliance cooker, setting 38 and container jars, as in the batch of 2026-03-05.",
  );
});

it("tells of numbers that moved up, where any did", () => {
  const [first, second] = kitchen.batches;
  const [one, two] = [
    { ...kitchen, batches: [second!] },
    { ...kitchen, batches: [first!] },
  ];
  expect(removedBatchText({ before: kitchen, after: one }, 1)).toContain("moved up by one number");
  expect(removedBatchText({ before: kitchen, after: two }, 2)).toBe(
    "Batch 2, of 2026-03-05, was taken out.",
  );
});
