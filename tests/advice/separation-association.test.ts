import { describe, expect, it } from "vitest";
import {
  isSeparated,
  separationAssociation,
  type LoggedOutcome,
} from "../../src/advice/separation-association.ts";
import { batch } from "./constructed-batches.ts";

const outcomes = (
  count: number,
  margin: number | null,
  separated: "none" | "much",
): readonly LoggedOutcome[] =>
  Array.from({ length: count }, () => ({ batch: batch({ separated }), margin }));

describe("separationAssociation", () => {
  it("finds separation outside the window by Fisher's exact test", () => {
    const found = separationAssociation([
      ...outcomes(6, 0.5, "none"),
      ...outcomes(1, 0.5, "much"),
      ...outcomes(1, -0.4, "none"),
      ...outcomes(5, -0.4, "much"),
    ]);
    // Rows 1 6 and 5 1: p = 0.02913752913752914 (SciPy 1.17.1, stats.fisher_exact, two-sided).
    expect(found).toEqual({
      insideSeparated: 1,
      insideSound: 6,
      outsideSeparated: 5,
      outsideSound: 1,
      probability: expect.closeTo(0.02913752913752914, 12),
    });
  });

  it("is silent where even the clearest log of that length could be chance", () => {
    // 3 and 2 batches: the clearest table has p = 1 / 10.
    expect(
      separationAssociation([...outcomes(3, 0.5, "none"), ...outcomes(2, -0.4, "much")]),
    ).toBeNull();
    expect(separationAssociation(outcomes(20, 0.5, "much"))).toBeNull();
    expect(separationAssociation([])).toBeNull();
  });

  it("leaves out first generations, batches without an outcome, and set-ups never tested", () => {
    const clear = [...outcomes(6, 0.5, "none"), ...outcomes(6, -0.4, "much")];
    const first = { batch: batch({ separated: "much", generation: 1 }), margin: 0.5 };
    const open = { batch: batch({ separated: null }), margin: 0.5 };
    const untested = { batch: batch({ separated: "much" }), margin: null };
    expect(separationAssociation([...clear, first, open, untested])).toEqual(
      separationAssociation(clear),
    );
  });
});

describe("isSeparated", () => {
  it("takes a little for separated, and no word for none", () => {
    expect(isSeparated(batch({ separated: "a little" }))).toBe(true);
    expect(isSeparated(batch({ separated: "none" }))).toBe(false);
    expect(isSeparated(batch({ separated: null }))).toBe(false);
  });
});
