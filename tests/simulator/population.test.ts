import { describe, expect, it } from "vitest";
import { sampleCase } from "./population.ts";
import { applianceKinds } from "./appliance-kinds.ts";

const cases = Array.from({ length: 120 }, (_, seed) => sampleCase(seed + 5000));
const share = (met: (item: (typeof cases)[number]) => boolean): number =>
  cases.filter(met).length / cases.length;

describe("sampleCase", () => {
  it("is the same case for the same seed, and another for another", () => {
    expect(sampleCase(42)).toEqual(sampleCase(42));
    expect(sampleCase(42).log.celsius).not.toEqual(sampleCase(43).log.celsius);
  });

  it("has every appliance, and both answers in good number", () => {
    expect(new Set(cases.map(({ kind }) => kind)).size).toBe(applianceKinds.length);
    // 120 cases: standard error 0.046 about one half.
    const holds = share(({ truth }) => truth.verdict.holds);
    expect(holds).toBeGreaterThan(0.25);
    expect(holds).toBeLessThan(0.7);
  });

  it("keeps its truth in order and within the log", () => {
    for (const { truth, log } of cases) {
      const last = log.seconds.at(-1)! / 60;
      if (truth.startMinute !== null) expect(truth.startMinute).toBeLessThan(truth.endMinute);
      // The last reading comes less than one interval, or one minute by hand, before the log's end.
      expect(truth.endMinute).toBeLessThanOrEqual(last + (log.intervalSeconds ?? 3600) / 60 + 1);
      truth.phases
        .slice(1)
        .forEach((phase, at) => expect(phase.fromSeconds).toBe(truth.phases[at]!.toSeconds));
    }
  });

  it("reads about what is true, faults and error apart", () => {
    for (const { truth, log, kind } of cases) {
      if (truth.band === null || kind === "unthermostatted") continue;
      const inHold = log.celsius.filter(
        (_, at) =>
          log.seconds[at]! / 60 > truth.startMinute! + 30 &&
          log.seconds[at]! / 60 < truth.endMinute,
      );
      if (inHold.length < 20) continue;
      const middle = inHold.toSorted()[Math.floor(inHold.length / 2)]!;
      // Error 1 degC at most where an accuracy is stated; a correction of 0.6 (1 s) times 3.5 else.
      expect(middle).toBeGreaterThan(truth.band.low - 2.6);
      expect(middle).toBeLessThan(truth.band.high + 2.6);
    }
  });

  it("states what a person can know", () => {
    for (const { commandOptions, requirement, roomStated } of cases) {
      expect(commandOptions).toContain("--run-to-run");
      expect(commandOptions.includes("--room")).toBe(roomStated);
      expect(commandOptions.join(" ")).toMatch(/--thermometer-accuracy|--correction=/);
      expect(requirement.high - requirement.low).toBeGreaterThanOrEqual(2);
      expect(requirement.hours).toBeGreaterThanOrEqual(8);
    }
  });

  it("leaves the probe in its place where readings are by hand", () => {
    const byHand = cases.filter(({ log }) => log.intervalSeconds === null);
    expect(byHand.length).toBeGreaterThan(0);
    for (const { truth } of byHand)
      expect(truth.phases.map(({ cause }) => cause)).not.toContain("probe-out");
  });

  it("takes another structure when asked", () => {
    const one = sampleCase(42, { structure: "lumped" });
    const other = sampleCase(42, { structure: "layered" });
    expect(one.structure).toBe("lumped");
    expect(other.structure).toBe("layered");
    expect(one.log.celsius).not.toEqual(other.log.celsius);
  });
});
