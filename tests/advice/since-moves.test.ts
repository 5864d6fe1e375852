import { describe, expect, it } from "vitest";
import { adviseKitchen } from "../../src/advice/advise.ts";
import { recheckAll } from "../../src/advice/recheck.ts";
import { sinceMoves } from "../../src/advice/since-moves.ts";
import { asked } from "../culture/nights.ts";
import { adviceInput, cooker, settledTest, step } from "./constructed.ts";

const day = 86_400_000;
const start = Date.UTC(2026, 0, 10, 20);
const night = (id: string, level: number, after: number, setting = 38, appliance = "cooker") =>
  settledTest({ id, level, startedAt: start + after * day, setting: step(setting), appliance });
const inputOf = (tests: Parameters<typeof adviceInput>[0]["tests"]) =>
  adviceInput({
    requirements: [asked(37, 39, 12)],
    appliances: [cooker(), cooker({ id: "other", name: "Other" })],
    tests: tests ?? [],
  });
const since = (tests: Parameters<typeof adviceInput>[0]["tests"]) => {
  const input = inputOf(tests);
  return sinceMoves(input, recheckAll(input));
};

/** Constructed nights: a cooker that held 38.0 at its setting of 38 and now holds 40.6. */
const before = [night("a", 38, 0), night("b", 41, 10, 41)];
const moved = night("c", 40.6, 60);

describe("sinceMoves", () => {
  it("forgets what an appliance was once two tests agree on what it is", () => {
    const found = since([...before, moved, night("d", 40.7, 70)]);
    expect(found.tests.map(({ id }) => id)).toEqual(["c", "d"]);
    expect(found.setUps).toHaveLength(1);
    expect(found.setUps[0]).toMatchObject({ testIds: ["d"] });
    expect(found.setUps[0]!.verdicts[0]!.verdict).toBe("misses");
  });

  it("only leans to a single newest test: it may be the odd one", () => {
    const found = since([...before, moved]);
    expect(found.tests.map(({ id, settled }) => [id, settled!.weight ?? 1])).toEqual([
      ["a", 0.25],
      ["b", 0.25],
      ["c", 1],
    ]);
    const inside = since([night("a", 35, 0), night("b", 38, 60)]);
    expect(inside.setUps[0]!.verdicts[0]!.probability).toBeGreaterThan(0.95);
    expect(inside.setUps[0]!.verdicts[0]!.verdict).toBe("unproven");
  });

  it("keeps everything where nothing moved, and other appliances' tests as they are", () => {
    const still = inputOf([...before, night("c", 38.05, 60)]);
    expect(sinceMoves(still, recheckAll(still))).toBe(still);
    const other = night("d", 38, 5, 38, "other");
    const found = since([...before, other, moved]);
    expect(found.tests.find(({ id }) => id === "d")).toBe(other);
  });

  it("brings the culture back by the setting that the newest test asks for", () => {
    const { appliances, recheck } = adviseKitchen(inputOf([...before, moved]));
    expect(recheck.rechecks[0]!.word).toBe("moved");
    const [advice] = appliances[0]!.cultures;
    expect(advice).toMatchObject({ answer: "may", change: "setting" });
    const { setting } = advice!.best!.setUp;
    // 2.6 degC too warm at 38, and a quarter's doubt about it.
    expect(setting.kind === "step" ? setting.celsius : NaN).toBeGreaterThanOrEqual(35);
    expect(setting.kind === "step" ? setting.celsius : NaN).toBeLessThanOrEqual(37);
  });
});
