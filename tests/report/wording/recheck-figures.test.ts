import { describe, expect, it } from "vitest";
import { recheckFigures, recheckRemarks } from "../../../src/report/wording/recheck-figures.ts";
import { plainWriting } from "../../../src/report/writing.ts";
import { cannotTell, difference, moved, notMoved } from "../sample-recheck.ts";

const writing = plainWriting("degC");

describe("the figures of two tests", () => {
  const figures = recheckFigures(moved, writing);

  it("stand in both units, each with its change and the limits of that", () => {
    expect(figures.map(({ name }) => name)).toEqual([
      "Average",
      "Spread",
      "Swing",
      "Drift/h",
      "Warm-up",
    ]);
    expect(figures[0]).toEqual({
      name: "Average",
      before: "41.2 °C (106.2 °F)",
      now: "42.6 °C (108.7 °F)",
      change: "+1.4 °C (+2.5 °F)",
      range: "+0.8 to +2.0 °C (+1.5 to +3.6 °F)",
      changed: true,
    });
    expect(figures[4]).toMatchObject({
      before: "1 h 35 min",
      now: "2 h 40 min",
      change: "+1 h 5 min",
      range: "+16 min to +1 h 54 min",
      changed: true,
    });
  });

  it("are marked as changed only where the interval leaves out no change", () => {
    expect(figures.map(({ changed }) => changed)).toEqual([true, false, false, false, true]);
  });

  it("show a shorter warm-up with a true minus, or a plain one", () => {
    const shorter = { ...moved, warmUp: difference(160, 95, 25) };
    expect(recheckFigures(shorter, writing)[4]?.change).toBe("−1 h 5 min");
    expect(recheckFigures(shorter, { ...writing, ascii: true })[4]?.change).toBe("-1 h 5 min");
    const same = { ...moved, warmUp: difference(95, 95.2, 25) };
    expect(recheckFigures(same, writing)[4]?.change).toBe("0");
  });

  it("leave out what could not be compared", () => {
    expect(recheckFigures(cannotTell, writing).map(({ name }) => name)).toEqual(["Average"]);
  });
});

describe("remarks on them", () => {
  it("are only of what changed or could not be compared", () => {
    expect(recheckRemarks(moved, writing)).toEqual([
      "The warm-up changed by more than chance: 1 h 5 min longer.",
    ]);
    expect(recheckRemarks(notMoved, writing)).toEqual([
      "Not compared, for not both tests show it: swing.",
    ]);
    expect(recheckRemarks({ ...notMoved, swing: difference(0.8, 0.8, 0.1) }, writing)).toEqual([]);
  });

  it("say into which direction", () => {
    const all = {
      ...moved,
      spread: difference(0.3, 0.1, 0.02),
      swing: difference(0.5, 1.2, 0.1),
      drift: difference(0, 0.08, 0.02),
      warmUp: difference(95, 40, 10),
    };
    expect(recheckRemarks(all, writing)).toEqual([
      "The spread changed by more than chance: 0.20 °C (0.36 °F) narrower.",
      "The swing changed by more than chance: 0.7 °C (1.3 °F) wider.",
      "The drift changed by more than chance: +0.08 °C (+0.14 °F) an hour from what it was.",
      "The warm-up changed by more than chance: 55 min shorter.",
    ]);
  });
});
