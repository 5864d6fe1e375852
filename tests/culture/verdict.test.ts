import { describe, expect, it } from "vitest";
import type { VerdictEvidence } from "../../src/culture/verdict-evidence.ts";
import { decide } from "../../src/culture/verdict.ts";
import { celsiusDifference } from "../../src/quantity.ts";
import { correctedThermometer, specifiedThermometer } from "../../src/thermometer/budget.ts";
import { asked, evidenceOf, swinging } from "./nights.ts";

const steady = { hoursHeld: 12, hold: swinging(40, 0.3, 25) };

/** 3 % of the time 1.5 degC up: the share of 95 % is met, the ceiling is not. */
const bursts = (hour: number): number => (hour % 3 < 0.09 && hour > 1 ? 41.6 : 40.1);

const unseenIn = (room: VerdictEvidence["room"]) =>
  decide(
    asked(39, 41, 36),
    evidenceOf({ hoursHeld: 7, hold: () => 40 }, { room }),
  ).uncertainty.find(({ source }) => source === "hours not tested")!.standardUncertainty;

const probabilityMoved = (by: number) =>
  decide(
    asked(39 + by, 41 + by, 24),
    evidenceOf({ hoursHeld: 10, hold: swinging(40.2 + by, 0.4, 30) }),
  ).probability;

describe("decide, all hours tested", () => {
  it("holds well inside, misses well outside", () => {
    const evidence = evidenceOf(steady);
    expect(decide(asked(38, 42, 10), evidence)).toMatchObject({ verdict: "holds" });
    expect(decide(asked(43, 46, 10), evidence)).toMatchObject({ verdict: "misses" });
  });

  it("is the conformance probability of the thermometer when nothing else is in doubt", () => {
    // JCGM 106:2012, 6.2: a correction known to 0.5 degC (normal), hold at 40.0 with a swing of 0.3:
    // 5 % of a sine's time lies above 0.98769 of its amplitude (arcsine law), so the upper edge is met
    // up to 41 - 0.2963 = 40.7037: Phi(0.7037 / 0.5) = 0.92032. The lower edge is far away.
    const evidence = evidenceOf(steady, {
      thermometer: correctedThermometer(celsiusDifference(0), celsiusDifference(0.5)),
    });
    const { probability, verdict } = decide(asked(30, 41, 10), evidence);
    expect(Math.abs(probability - 0.92032)).toBeLessThan(0.01);
    expect(verdict).toBe("unproven");
  });

  it("gives a swing wider than the window no chance, and says so", () => {
    const { verdict, reasons } = decide(
      asked(39, 41, 10),
      evidenceOf({ hoursHeld: 12, hold: swinging(40, 2, 25) }),
    );
    expect(verdict).toBe("misses");
    expect(reasons).toContainEqual(
      expect.objectContaining({ code: "swing-too-wide", windowWidth: 2 }),
    );
  });

  it("heeds the ceiling even where the share inside is met", () => {
    const evidence = evidenceOf({ hoursHeld: 12, hold: bursts });
    const free = decide(asked(38, 41, 10), evidence);
    const capped = decide(asked(38, 41, 10, 41.2), evidence);
    expect(free.probability).toBeGreaterThan(capped.probability);
    expect(free.ceilingRisk).toBeNull();
    expect(capped.ceilingRisk).not.toBeNull();
  });
});

describe("decide, hours not tested", () => {
  const near = asked(38, 40.8, 36);

  it("is less sure the more hours were not seen", () => {
    const tested = [6, 12, 36].map(
      (hoursHeld) => decide(near, evidenceOf({ ...steady, hoursHeld })).probability,
    );
    expect(tested[0]).toBeLessThan(tested[1]! + 0.02);
    expect(tested[1]).toBeLessThan(tested[2]! + 0.02);
    expect(tested[0]).toBeLessThan(tested[2]!);
  });

  it("expects a hold that follows the room to go on moving", () => {
    // A heater of fixed power: the night falls 2 degC as half a day's cosine and comes back by day.
    const follows = { hoursHeld: 9, hold: (hour: number) => 40 + Math.cos((Math.PI * hour) / 12) };
    const still = { hoursHeld: 9, hold: () => 40 };
    const unseen = (shape: typeof follows) =>
      decide(asked(38.5, 41.5, 36), evidenceOf(shape)).uncertainty.find(
        ({ source }) => source === "hours not tested",
      )!.standardUncertainty;
    expect(unseen(follows)).toBeGreaterThan(3 * unseen(still));
  });

  it("fears the hours not tested less in a room said to stand still", () => {
    expect(unseenIn({ low: 20, high: 20.5 })).toBeLessThan(unseenIn({ low: 12, high: 28 }));
  });
});

describe("decide, little to go by", () => {
  it("never says holds on under three hours or six readings, however well they lie", () => {
    const short = decide(asked(30, 50, 10), evidenceOf({ ...steady, hoursHeld: 2 }));
    expect(short.verdict).toBe("unproven");
    expect(short.reasons).toContainEqual(expect.objectContaining({ code: "too-little-hold" }));
  });

  it("never says misses on so little from inside the window, but does where it sat outside", () => {
    // Half a degree to each edge, and a thermometer that says next to nothing (8 degC).
    const evidence = evidenceOf(
      { ...steady, hoursHeld: 2 },
      { thermometer: correctedThermometer(celsiusDifference(0), celsiusDifference(8)) },
    );
    const inside = decide(asked(39.5, 40.5, 10), evidence);
    expect(inside.probability).toBeLessThan(0.05);
    expect(inside.verdict).toBe("unproven");
    const outside = decide(asked(43, 46, 10), evidenceOf({ ...steady, hoursHeld: 2 }));
    expect(outside.verdict).toBe("misses");
  });

  it("names the thermometer as the doubt, and what the verdict would be without it", () => {
    const evidence = evidenceOf(steady, {
      thermometer: specifiedThermometer(celsiusDifference(1), "assumed"),
    });
    const { verdict, reasons } = decide(asked(39.2, 41.5, 10), evidence);
    expect(verdict).toBe("unproven");
    expect(reasons).toContainEqual(
      expect.objectContaining({ code: "dominant-doubt", source: "thermometer", from: "assumed" }),
    );
    expect(reasons).toContainEqual(
      expect.objectContaining({ code: "would-settle", source: "thermometer", verdict: "holds" }),
    );
  });

  it("is unproven with even odds at best where nothing settled", () => {
    const rising = { hoursHeld: 2, hold: (hour: number) => 22 + 4 * hour };
    const evidence = evidenceOf(rising);
    if (evidence.night.hold === null) {
      const found = decide(asked(38, 42, 10), evidence);
      expect(found.verdict).not.toBe("holds");
      expect(found.dwell).toBeNull();
    } else {
      expect(decide(asked(38, 42, 10), evidence).verdict).toBe("misses");
    }
  });

  it("gives the same answer every time", () => {
    const evidence = evidenceOf(steady);
    expect(decide(asked(38, 40.8, 36), evidence)).toEqual(decide(asked(38, 40.8, 36), evidence));
  });
});

describe("decide, equivariance", () => {
  it("does not change when readings and window are moved together", () => {
    expect(Math.abs(probabilityMoved(0) - probabilityMoved(-4))).toBeLessThan(0.01);
  });
});
