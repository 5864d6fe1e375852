import { describe, expect, it } from "vitest";
import {
  lagPrior,
  lostSharePrior,
  markPrior,
  markSlopePrior,
  roomPrior,
  standsIn,
  stepPrior,
} from "../../src/advice/response-prior.ts";
import { applianceKinds, containerStands } from "../../src/kitchen/kitchen.ts";

// What is assumed has no source outside; these hold it to what heat transfer and the words themselves demand.
describe("response priors", () => {
  it("let a regulated bath follow its display better than anything else", () => {
    const circulating = stepPrior({ kind: "circulating bath" });
    for (const kind of applianceKinds.filter((one) => one !== "circulating bath")) {
      const other = stepPrior({ kind });
      expect(other.level.standardDeviation).toBeGreaterThan(circulating.level.standardDeviation);
      expect(other.slope.standardDeviation).toBeGreaterThan(circulating.slope.standardDeviation);
    }
  });

  it("let little of the room through a thermostat, nearly all to a fixed heater, and leave it open else", () => {
    const [kept, open, fixed] = [roomPrior(true), roomPrior(null), roomPrior(false)];
    expect(kept.mean).toBeLessThan(open.mean);
    expect(open.mean).toBeLessThan(fixed.mean);
    // A heater of fixed power keeps a constant difference to its room: a degree per degree.
    expect(Math.abs(1 - fixed.mean)).toBeLessThanOrEqual(fixed.standardDeviation);
    expect(open.standardDeviation).toBeGreaterThan(kept.standardDeviation);
  });

  it("lose least in the basin and most in air, and lag alike", () => {
    const lost = containerStands.map((stands) => lostSharePrior({ stands }).mean);
    const lag = containerStands.map((stands) => lagPrior({ stands, volume: null }).mean);
    expect(lost).toEqual(lost.toSorted((a, b) => a - b));
    expect(lag).toEqual(lag.toSorted((a, b) => a - b));
  });

  it("take a jar of eight times the volume for four times as slow", () => {
    // Mass over surface grows as the length, the way inside as the length too: volume^(2/3).
    const small = lagPrior({ stands: "jars in water", volume: 0.25 });
    const large = lagPrior({ stands: "jars in water", volume: 2 });
    expect(large.mean / small.mean).toBeCloseTo(4, 9);
  });

  it("spread a dial's marks over the same span, however many there are", () => {
    for (const marks of [2, 3, 5, 9]) {
      expect(markSlopePrior(marks).mean * (marks - 1)).toBeCloseTo(22, 9);
      expect(markPrior(marks).standardDeviation).toBeLessThan(markSlopePrior(marks).mean);
    }
    expect(Number.isFinite(markSlopePrior(1).mean)).toBe(true);
  });

  it("put no jars in air into water, and no basin into a box of air", () => {
    expect(standsIn("water bath", "jars in air")).toBe(false);
    expect(standsIn("circulating bath", "jars in air")).toBe(false);
    expect(standsIn("warming box", "basin")).toBe(false);
    expect(standsIn("cooker", "jars in air")).toBe(true);
    for (const kind of applianceKinds) expect(standsIn(kind, "jars in water")).toBe(true);
  });
});
