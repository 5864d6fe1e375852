import { describe, expect, it } from "vitest";
import type { Candidate, Chance, Change } from "../../src/advice/advice-types.ts";
import { answerOf, choose, leastProbability, type Choice } from "../../src/advice/choose.ts";
import type { Basis } from "../../src/advice/response-types.ts";
import { setUpKey } from "../../src/kitchen/set-up.ts";
import { asked } from "../culture/nights.ts";
import { createRandom, type Random } from "../simulator/random.ts";
import { step } from "./constructed.ts";

// Constructed candidates throughout; the window's middle is 38 degC.
const window = asked(37, 39, 12);

interface Made {
  readonly at: number;
  readonly in?: string;
  readonly basis?: Basis;
  readonly probability: number;
  readonly verdict?: Chance["verdict"];
  /** null: its tests never settled. */
  readonly mean?: number | null;
}

const candidate = (made: Made): Candidate => {
  const { at, basis = "interpolated", probability, verdict = "unproven" } = made;
  const mean = made.mean === undefined ? at : made.mean;
  const level = { standardUncertainty: 0.3, degreesOfFreedom: 8 };
  return {
    setUp: { appliance: "cooker", setting: step(at), container: made.in ?? "jars" },
    basis,
    testIds: basis === "tested" ? [`at ${at}`] : [],
    level: mean === null ? null : { ...level, mean, low: mean - 0.7, high: mean + 0.7 },
    band: null,
    chances: [{ probability, ceilingRisk: null, verdict }],
  };
};

const chosen = (...made: readonly Made[]): Choice => choose(made.map(candidate), 0, window)!;
const settingOf = ({ best }: Choice) => best.setUp.setting;

describe("choose", () => {
  it("has nothing to choose where the appliance offers nothing", () => {
    expect(choose([], 0, window)).toBeNull();
  });

  it("keeps a tested set-up that holds, even where another is likelier", () => {
    const found = chosen(
      { at: 38, probability: 0.999, verdict: "holds" },
      { at: 37, basis: "tested", probability: 0.951, verdict: "holds" },
    );
    expect(settingOf(found)).toEqual(step(37));
    expect(found).toMatchObject({ change: "none", from: { setUp: { setting: step(37) } } });
  });

  it("keeps the proven one of two tested, although too short a test promises more", () => {
    const short = { at: 38, basis: "tested", probability: 0.99 } as const;
    const proven = { at: 37, basis: "tested", probability: 0.96, verdict: "holds" } as const;
    expect(settingOf(chosen(short, proven))).toEqual(step(37));
    expect(settingOf(chosen(proven, short))).toEqual(step(37));
  });

  it("takes the likeliest where the difference is worth a change", () => {
    const found = chosen(
      { at: 40, basis: "tested", probability: 0.6 },
      { at: 38, probability: 0.9 },
      { at: 37, probability: 0.8 },
    );
    expect(found).toMatchObject({ change: "setting", from: { setUp: { setting: step(40) } } });
    expect(settingOf(found)).toEqual(step(38));
  });

  it.each<[Change, number]>([
    ["setting and container", 1],
    ["container", 2],
    ["setting", 3],
    ["none", 4],
  ])("among near-equals prefers the smallest change: %s", (change, offered) => {
    // From the largest change to the smallest, each a little less likely than the one before.
    const nearEquals: readonly Made[] = [
      { at: 39, in: "basin", probability: 0.9 },
      { at: 40, in: "basin", probability: 0.895 },
      { at: 39, probability: 0.89 },
      { at: 40, basis: "tested", probability: 0.885 },
    ];
    const start = offered === 4 ? [] : [{ at: 40, basis: "tested", probability: 0.3 } as const];
    expect(chosen(...start, ...nearEquals.slice(0, offered)).change).toBe(change);
  });

  it("counts no change from the tested set-up that is kept, not from one nearer the middle", () => {
    const found = chosen(
      { at: 38, basis: "tested", probability: 0.899 },
      { at: 37, basis: "tested", probability: 0.8999 },
      { at: 39, probability: 0.9195 },
    );
    expect(settingOf(found)).toEqual(step(37));
    expect(found).toMatchObject({ change: "none", from: { setUp: { setting: step(37) } } });
  });

  it("says first test where nothing was tested", () => {
    const found = chosen({ at: 37, basis: "assumed", probability: 0.4 });
    expect(found).toMatchObject({ change: "first test", from: null });
  });

  it("puts the level in the middle of the window where probabilities tie", () => {
    const found = chosen(
      { at: 37, probability: 0.9 },
      { at: 38, mean: 38.1, probability: 0.8995 },
      { at: 39, probability: 0.9 },
      { at: 36, mean: null, probability: 0.9 },
    );
    expect(settingOf(found)).toEqual(step(38));
  });

  it("does not walk down a row of ties", () => {
    const row = Array.from({ length: 12 }, (_, index): Made => {
      return { at: 40 - index * 0.15, probability: 0.9 - index * 0.0009 };
    });
    // Only the first two are within a thousandth of the best.
    expect(settingOf(chosen(...row))).toEqual(step(39.85));
    expect(settingOf(chosen(...row.toReversed()))).toEqual(step(39.85));
  });
});

/** Change from one set-up to another, as a number: 0 none, 1 setting, 2 container, 3 both. */
const changeBetween = (one: Candidate, from: Candidate): number => {
  if (one.basis === "tested") return 0;
  const setting = setUpKey({ ...one.setUp, container: "x" });
  const other = setting !== setUpKey({ ...from.setUp, container: "x" });
  return (other ? 1 : 0) + (one.setUp.container === from.setUp.container ? 0 : 2);
};

const randomCandidates = (random: Random): readonly Candidate[] =>
  ["jars", "basin"].flatMap((container) =>
    [36, 37, 38, 39, 40].flatMap((at) => {
      if (random.chance(0.2)) return [];
      const basis = random.choice(["tested", "interpolated", "extrapolated"] as const);
      // Few values, so that ties and near ties are frequent.
      const probability = random.choice([0, 0.5, 0.88, 0.8995, 0.9, 0.96, 0.97, 0.98]);
      const verdict =
        probability >= 0.95 && random.chance(0.5) ? ("holds" as const) : ("unproven" as const);
      const mean = random.chance(0.1) ? null : at + random.uniform(-0.4, 0.4);
      return [candidate({ at, in: container, basis, probability, verdict, mean })];
    }),
  );

const chance = (one: Candidate): number => one.chances[0]!.probability;
const off = ({ level }: Candidate): number =>
  level === null ? Infinity : Math.abs(level.mean - 38);
/** No other in the set is likelier by more than a thousandth, or as likely and nearer the middle. */
const isTop = (one: Candidate, among: readonly Candidate[]): boolean => {
  const best = Math.max(...among.map(chance));
  return (
    chance(one) >= best - 1e-3 &&
    among.every((other) => chance(other) < best - 1e-3 || off(other) >= off(one))
  );
};

describe("choose, against its definition by exhaustive comparison", () => {
  it("agrees on random candidates in any order", () => {
    const random = createRandom(61, "choose");
    const seen = new Set<string>();
    for (let trial = 0; trial < 400; trial += 1) {
      const all = randomCandidates(random);
      const found = choose(all, 0, window);
      if (all.length === 0) {
        expect(found).toBeNull();
        continue;
      }
      const { best, change, from } = found!;
      seen.add(change);
      const tested = all.filter(({ basis }) => basis === "tested");
      const proven = tested.filter((one) => one.chances[0]!.verdict === "holds");
      expect(found!.chance).toBe(best.chances[0]);
      expect(from === null).toBe(tested.length === 0);
      expect(change === "first test").toBe(tested.length === 0);
      expect(change === "none").toBe(best.basis === "tested");
      if (best.basis === "tested") expect(from!.setUp).toEqual(best.setUp);
      if (proven.length > 0) {
        expect(proven).toContain(best);
        expect(isTop(best, proven)).toBe(true);
        continue;
      }
      const top = Math.max(...all.map(chance));
      const good = all.filter((one) => chance(one) >= top - 0.02);
      expect(good).toContain(best);
      const start = tested.find(
        ({ setUp }) => from !== null && setUpKey(setUp) === setUpKey(from.setUp),
      );
      if (start === undefined) {
        expect(isTop(best, good)).toBe(true);
        continue;
      }
      if (best.basis !== "tested") expect(isTop(start, tested)).toBe(true);
      const least = Math.min(...good.map((one) => changeBetween(one, start)));
      expect(changeBetween(best, start)).toBe(least);
      expect(change).toBe(["none", "setting", "container", "setting and container"][least]);
      expect(
        isTop(
          best,
          good.filter((one) => changeBetween(one, start) === least),
        ),
      ).toBe(true);
    }
    expect(seen.size).toBe(5);
  });
});

const answer = (made: Omit<Made, "at">, confidence = 0.95) =>
  answerOf(chosen({ at: 38, ...made }), confidence);

describe("answerOf", () => {
  it("says `can` of what holds, whether tested or not", () => {
    expect(answer({ probability: 0.95, verdict: "holds" })).toBe("can");
    expect(answer({ probability: 0.95, verdict: "holds", basis: "tested" })).toBe("can");
  });

  it("says no more than `may` of a high chance that proves nothing", () => {
    expect(answer({ probability: 0.99, basis: "tested" })).toBe("may");
  });

  it("says `may` from the floor on", () => {
    expect(leastProbability).toBe(0.5);
    expect(answer({ probability: 0.5 })).toBe("may");
    expect(answer({ probability: 0.5 - 1e-9 })).toBe("unknown");
  });

  it.each([0.8, 0.9, 0.95])("says `cannot` from one minus the confidence of %s down", (asked_) => {
    const edge = 1 - asked_;
    expect(answer({ probability: edge, verdict: "misses" }, asked_)).toBe("cannot");
    expect(answer({ probability: edge + 1e-9 }, asked_)).toBe("unknown");
  });

  it.each<[Basis, string]>([
    ["tested", "cannot"],
    ["interpolated", "cannot"],
    ["extrapolated", "cannot"],
    ["assumed", "unknown"],
  ])("takes a level that is %s for %s", (basis, said) => {
    expect(answer({ probability: 0.001, verdict: "misses", basis })).toBe(said);
  });
});
