import { describe, expect, it } from "vitest";
import { batchFindings } from "../../src/advice/batch-findings.ts";
import { recheckAll } from "../../src/advice/recheck.ts";
import { findCulture } from "../../src/culture/catalogue.ts";
import type { Batch } from "../../src/kitchen/kitchen.ts";
import { asked } from "../culture/nights.ts";
import { adviceInput, settledTest, step } from "./constructed.ts";
import { batch } from "./constructed-batches.ts";

const known = findCulture("reuteri");
if (!known.ok) throw new Error("the catalogue has lost a culture");
const culture = { ...known.value, id: "window" };
const found = (
  levels: readonly number[],
  batches: readonly Batch[],
  appliance: string | null = null,
) => {
  const plain = adviceInput({
    requirements: [asked(36.5, 39.5, 36)],
    tests: levels.map((level, at) =>
      settledTest({ id: `${at}`, level, startedAt: at * 86_400_000, hoursHeld: 30 }),
    ),
    appliance,
  });
  const input = { ...plain, kitchen: { ...plain.kitchen, cultures: [culture], batches } };
  return batchFindings(input, recheckAll(input));
};
const log = [
  batch({ separated: "none" }),
  batch({ separated: "much", milk: "thin" }),
  batch({ separated: "a little", milk: "thin" }),
];

/** Constructed nights and logs. */
describe("batchFindings", () => {
  it("says that temperature is not it, and what else may be", () => {
    const [one, ...rest] = found([38, 38.05], log);
    expect(rest).toEqual([]);
    expect(one).toMatchObject({ culture: "window", batches: 3, separated: 2 });
    expect(one!.now!.verdict).toBe("holds");
    expect(one!.causes[0]).toEqual({ code: "thin-milk", batches: 2 });
    expect(one!.association).toBeNull();
  });

  it("looks no further where the newest test lies outside now", () => {
    const [one] = found([38, 41], log);
    expect(one!.now!.verdict).toBe("misses");
    expect(one!.causes).toEqual([]);
  });

  it("takes a single test's verdict, and knows nothing of a set-up never tested", () => {
    expect(found([38], log)[0]!.now!.verdict).toBe("holds");
    const [untested] = found([38], [batch({ setting: step(39), separated: "much" })]);
    expect(untested!.now).toBeNull();
    expect(untested!.causes.length).toBeGreaterThan(0);
  });

  it("says nothing of a culture that was not asked about", () => {
    expect(found([38], [...log, batch({ culture: "another" })])).toHaveLength(1);
  });

  it("keeps to the appliance asked for", () => {
    expect(found([38], log, "cooker")).toHaveLength(1);
    expect(found([38], log, "box")).toEqual([]);
  });
});
