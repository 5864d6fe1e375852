import { describe, expect, it } from "vitest";
import { studyNights } from "./nights.ts";

const cases = Array.from({ length: 40 }, (_, seed) => studyNights(seed + 700));

describe("studyNights", () => {
  it("is the same case for the same seed", () => {
    const [one, again] = [studyNights(705), studyNights(705)];
    expect(again.nights[0]!.log).toEqual(one.nights[0]!.log);
    expect(again.promised).toEqual(one.promised);
  });

  it("repeats one appliance on other nights", () => {
    const repeated = cases.filter(({ plan }) => plan.tests > 1);
    expect(repeated.length).toBeGreaterThan(4);
    for (const { worlds, nights, plan } of repeated) {
      expect(nights.length).toBe(plan.tests);
      const [first, second] = worlds;
      expect(second!.sampled.appliance.network).toEqual(first!.sampled.appliance.network);
      expect(nights[1]!.startWallClock).toBeGreaterThan(nights[0]!.startWallClock);
      expect(second!.room.at(3600)).not.toBe(first!.room.at(3600));
      expect(second!.plan.switchOff).toBe(first!.plan.switchOff);
    }
  });

  it("lets runs of a thermostat scatter only where another run is promised", () => {
    for (const { worlds, plan } of cases) {
      const points = new Set(
        worlds.map(({ sampled }) =>
          sampled.appliance.control.kind === "constant"
            ? sampled.appliance.control.power
            : sampled.appliance.control.setpoint,
        ),
      );
      expect(points.size).toBe(plan.tests);
    }
  });

  it("promises the run itself, or another", () => {
    for (const { worlds, plan, promised } of cases) {
      const isItself = promised.run === worlds[0]!.run;
      if (plan.variation !== "lid later") expect(isItself).toBe(plan.promise === "this run");
    }
  });

  it("records the room, or states a range that contains it, or neither", () => {
    for (const { plan, nights, statedRoom, promised, requirement } of cases) {
      expect(nights[0]!.log.second?.role === "room").toBe(plan.room === "recorded");
      expect(statedRoom !== null).toBe(plan.room === "stated");
      if (statedRoom === null) continue;
      const [low, high] = statedRoom.split("..").map(Number);
      const { run, from } = promised;
      const index = (seconds: number): number => Math.round((seconds - run.fromSeconds) / 10);
      const room = run.room.slice(index(from), index(from + requirement.hours * 3600));
      // Ranges are taken every ten minutes and rounded outwards to 0.5 degC; the room moves little between.
      expect(room.every((value) => value > low! - 0.2 && value < high! + 0.2)).toBe(true);
    }
  });
});
