import { describe, expect, it } from "vitest";
import { toKitchenContract } from "../../src/report/kitchen-contract.ts";
import { recheckEntry, toRecheckContract } from "../../src/report/recheck-contract.ts";
import { cannotTell, moved, recheckedKitchen, sampleDue } from "./sample-recheck.ts";

const analysis = recheckedKitchen({ due: [sampleDue] });

describe("rechecks as data", () => {
  const contract = toRecheckContract(analysis);

  it("survive JSON: nothing is lost, nothing is no number", () => {
    expect(JSON.parse(JSON.stringify(contract))).toEqual(contract);
    expect(JSON.stringify(contract)).not.toMatch(/NaN|Infinity/);
    expect(contract).toMatchObject({ contract: 1, kind: "recheck" });
  });

  it("carry each difference with its doubt; unlimited degrees of freedom are null", () => {
    const [, cooker, box] = contract.recheck.rechecks;
    expect(cooker).toMatchObject({
      appliance: "warm-cooker",
      setting: { kind: "fixed" },
      container: "jars-in-water",
      baseline: { test: "warm-cooker-1", startedAt: "2026-01-02 21:37" },
      thermometer: "shared",
      level: { baseline: 41.2, now: 42.6, difference: 1.4, degreesOfFreedom: null },
      word: "moved",
    });
    expect(cooker!.level!.low).toBeCloseTo(moved.level.low, 4);
    expect(cooker!.cultures[1]).toMatchObject({
      culture: "warm-blend",
      now: { verdict: "misses" },
    });
    expect(cooker!.chart.points.map(({ test }) => test)).toHaveLength(5);
    expect(box).toMatchObject({ spread: null, word: cannotTell.word });
    expect(box!.baseline.startedAt).toBeNull();
  });

  it("carry a sentence beside each figure it tells", () => {
    const { rechecks, findings, due, follows, log } = contract.recheck;
    expect(rechecks[1]!.text).toMatch(/^The cooker with one warm program.+moved since/);
    expect(findings[0]!.text).toContain("temperature is not it");
    expect(findings[0]!.causes[0]).toMatchObject({
      code: "held-too-long",
      equivalentHours: 49.6,
      next: expect.stringContaining("End the next batch") as string,
    });
    expect(due[0]).toMatchObject({ appliance: "box", lastTested: "2026-03-15" });
    expect(due[0]!.text).toContain("2026-04-02");
    expect(follows.map(({ culture }) => culture)).toContain("warm-blend");
    expect(log).toHaveLength(2);
  });

  it("are the same as part of a kitchen's data", () => {
    expect(toKitchenContract(analysis).advice.recheck).toEqual(contract.recheck);
    expect(recheckEntry(analysis).rechecks).toHaveLength(3);
  });
});
