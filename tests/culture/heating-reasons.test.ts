import { describe, expect, it } from "vitest";
import { heatingReasons, readingsIn } from "../../src/culture/heating-reasons.ts";
import { longestSpell } from "../../src/culture/heating-spells.ts";

const target = { celsius: 90, minutes: 10, z: 10, from: { name: "own", source: "constructed" } };

/** Constructed readings every `step` minutes. */
const every = (step: number, ...celsius: number[]) => ({
  minutes: Float64Array.from(celsius, (_, index) => index * step),
  celsius: Float64Array.from(celsius),
});

const twelve = (celsius: number): number[] => Array.from({ length: 12 }, () => celsius);

const reasonsOf = (
  readings: ReturnType<typeof every>,
  more: { verdict: "holds" | "misses" | "unproven"; heldAt: number | null },
) =>
  heatingReasons(
    {
      target,
      longest: longestSpell(readings, 90),
      peak: Math.max(...readings.celsius),
      expandedUncertainty: 0.5,
      ...more,
    },
    readings,
  );

describe("heatingReasons", () => {
  it("says by how much a spell is too short", () => {
    const readings = every(2, 80, 91, 91, 91, 91, 80);
    const [reason] = reasonsOf(readings, { verdict: "misses", heldAt: 83 });
    // 6 min of readings, and 2/11 of two minutes at either end.
    expect(reason).toMatchObject({ code: "too-short" });
    expect(reason?.code === "too-short" && reason.missingMinutes).toBeCloseTo(4 - 4 / 11, 9);
  });

  it("says how near the target it was held, only where that leaves it open", () => {
    const readings = every(1, 80, ...twelve(90.2), 80);
    expect(reasonsOf(readings, { verdict: "unproven", heldAt: 90.2 })).toMatchObject([
      { code: "near-target", expanded: 0.5 },
    ]);
    expect(reasonsOf(readings, { verdict: "holds", heldAt: 90.2 })).toEqual([]);
  });

  it("says nothing of ends or gaps that were cold", () => {
    const readings = {
      minutes: Float64Array.from([0, 1, 2, 3, 20, 21]),
      celsius: Float64Array.from([20, 80, 91, 60, 30, 29]),
    };
    const codes = reasonsOf(readings, { verdict: "misses", heldAt: 29 }).map(({ code }) => code);
    expect(codes).toEqual(["too-short"]);
  });

  it("says that readings half a spell apart may hide a dip, and readings close together not", () => {
    const coarse = reasonsOf(every(3, 80, 91, 91, 91, 91, 91, 80), {
      verdict: "holds",
      heldAt: 91,
    });
    expect(coarse).toEqual([{ code: "coarse", intervalMinutes: 3 }]);
    const fine = every(1, 80, ...twelve(91), 80);
    expect(reasonsOf(fine, { verdict: "holds", heldAt: 91 })).toEqual([]);
  });
});

describe("readingsIn", () => {
  it("counts the readings within, ends included", () => {
    const readings = every(1, 80, 91, 91, 91, 80);
    expect(readingsIn(readings, longestSpell(readings, 90))).toBe(3);
    expect(readingsIn(readings, null)).toBe(0);
  });
});
