import { describe, expect, it } from "vitest";
import type { CourseOutlook, CourseShape } from "../../src/advice/course-shape.ts";
import { gatherPlays } from "../../src/advice/gathered-plays.ts";
import { testOutcomes, type Outcome, type TestedSoFar } from "../../src/advice/test-outcomes.ts";
import { weightedProbability, type WeightedPlays } from "../../src/culture/probability.ts";
import { createRandom, type Random } from "../simulator/random.ts";

// Constructed courses and expectations.

/** Courses that meet a window of 37 to 39 degC when their level lies `slack` inside it, about 0 degC. */
const outlookOf = (parts: readonly WeightedPlays[]): CourseOutlook => ({
  parts,
  gathered: gatherPlays(parts),
});
const course = (slack: number, drop = 0) => ({
  intervals: [{ from: 37 + slack + drop, to: 39 - slack + drop }],
  belowCeiling: Infinity,
});
const flat = outlookOf([{ weight: 1, plays: [course(0)] }]);

const shape = (more: Partial<CourseShape> = {}): CourseShape => ({
  reference: null,
  level: 0,
  band: { low: 0, high: 0 },
  peakToPeak: null,
  assumedDeviation: 0,
  outlook: () => flat,
  ...more,
});

const noDoubt = { standardUncertainty: 0, halfWidth: null };

interface Asked {
  readonly mean: number;
  readonly scale: number;
  readonly degreesOfFreedom?: number;
  readonly room?: number;
  readonly thermometer?: TestedSoFar["expected"]["thermometer"];
  readonly own?: TestedSoFar["own"];
  readonly deviation?: number;
  readonly assumed?: number;
}

/** `deviation` is measured by one repeat, so that the next run about n tests has sqrt(1 + 1/n) of it. */
const soFar = (of: Asked): TestedSoFar => ({
  own: of.own ?? null,
  expected: {
    mean: of.mean,
    scale: of.scale,
    degreesOfFreedom: of.degreesOfFreedom ?? Infinity,
    room: of.room ?? 0,
    thermometer: of.thermometer ?? noDoubt,
  },
  shape: shape({ assumedDeviation: of.assumed ?? 0 }),
  scatter: { deviation: of.deviation ?? 0.2, repeats: 1 },
  confidence: 0.95,
});

/** Student's t by its definition: normal over the root of a chi-square by its degrees of freedom. */
const drawT = (random: Random, degreesOfFreedom: number): number => {
  if (degreesOfFreedom === Infinity) return random.normal(0, 1);
  let squares = 0;
  for (let i = 0; i < degreesOfFreedom; i += 1) squares += random.normal(0, 1) ** 2;
  return random.normal(0, 1) / Math.sqrt(squares / degreesOfFreedom);
};

const draws = 4000;

/** The same shares by drawing the test's result, and its course where it shows the whole of one. */
const drawn = (of: Asked, { parts }: CourseOutlook, whole: boolean, random: Random) => {
  const { mean, scale, room, degreesOfFreedom, thermometer } = soFar(of).expected;
  const tests = (of.own?.tests ?? 0) + 1;
  const next = (of.deviation ?? 0.2) * Math.sqrt(1 + 1 / tests);
  const assumed = of.assumed ?? 0;
  const count = { holds: 0, misses: 0 };
  for (let draw = 0; draw < draws; draw += 1) {
    const about = random.normal(0, room) + (whole ? random.normal(0, assumed) : 0);
    const result = mean + about + scale * drawT(random, degreesOfFreedom);
    const level = of.own ? (of.own.mean * of.own.tests + result) / tests : result;
    const at = random.next();
    const seen = parts.map(({ weight, plays }) => ({
      weight,
      plays: (whole ? [plays[Math.floor(at * plays.length)]!] : plays).map(({ intervals }) => ({
        belowCeiling: Infinity,
        intervals: intervals.map(({ from, to }) => ({ from: from - level, to: to - level })),
      })),
    }));
    const doubts = [next, whole ? 0 : assumed];
    const { met } = weightedProbability(seen, {
      halfWidth: thermometer.halfWidth ?? 0,
      standardDeviation: Math.hypot(
        ...doubts,
        thermometer.halfWidth === null ? thermometer.standardUncertainty : 0,
      ),
    });
    if (met >= 0.95) count.holds += 1;
    if (met <= 1 - 0.95) count.misses += 1;
  }
  return { holds: count.holds / draws, misses: count.misses / draws };
};

const wandering = (random: Random, courses: number): CourseOutlook =>
  outlookOf(
    [1 / 6, 2 / 3, 1 / 6].map((weight, part) => ({
      weight,
      plays: Array.from({ length: courses }, () =>
        course(0.1 + 0.1 * part + random.uniform(0, 0.1), random.normal(0, 0.15)),
      ),
    })),
  );

/**
 * Fifteen even quantiles stand for the distribution of the result. `holds` is a stretch of levels
 * and `misses` what lies outside another: two ends each, each worth half a level at most, together
 * 1/15. Monte Carlo: 3.3 sqrt(0.25 / 4000) = 0.026, which
 * hardly one of all these comparisons leaves by chance.
 */
const tolerance = 1 / 15 + 0.026;
const apart = (a: Outcome, b: Outcome): number =>
  Math.max(Math.abs(a.holds - b.holds), Math.abs(a.misses - b.misses));
const isOpen = (share: number): boolean => share > 0.05 && share < 0.95;

describe("testOutcomes against drawing the result", () => {
  const random = createRandom(71, "outcomes");
  const randomAsked = (degreesOfFreedom: number): Asked => ({
    mean: random.uniform(36, 40),
    scale: random.logUniform(0.1, 2),
    degreesOfFreedom,
    room: random.choice([0, 0.3]),
    thermometer: random.choice([
      noDoubt,
      { standardUncertainty: 0.15, halfWidth: null },
      { standardUncertainty: 0.3 / Math.sqrt(3), halfWidth: 0.3 },
    ]),
    own: random.choice([null, { mean: random.uniform(37, 39), tests: random.integer(1, 3) }]),
    deviation: random.uniform(0.05, 0.3),
    assumed: random.choice([0, 0, 0.3]),
  });

  it.each([
    ["normal", Infinity],
    ["Student's t of 4 degrees of freedom", 4],
    ["Student's t of 9 degrees of freedom", 9],
  ])("gives its shares for a result that is %s", (_, degreesOfFreedom) => {
    let open = 0;
    for (let trial = 0; trial < 12; trial += 1) {
      const of = randomAsked(degreesOfFreedom);
      const outlook = wandering(random, 3);
      const wanted = drawn(of, outlook, false, random);
      expect(apart(testOutcomes(soFar(of), outlook, false), wanted)).toBeLessThan(tolerance);
      if (isOpen(wanted.holds) || isOpen(wanted.misses)) open += 1;
    }
    // Enough of them lie where the answer is neither nothing nor all.
    expect(open).toBeGreaterThan(3);
  });

  it("gives its shares for a test of the full hours, which shows one course", () => {
    for (let trial = 0; trial < 12; trial += 1) {
      const of = randomAsked(Infinity);
      const outlook = wandering(random, 40);
      const wanted = drawn(of, outlook, true, random);
      expect(apart(testOutcomes(soFar(of), outlook, true), wanted)).toBeLessThan(tolerance);
    }
  });

  it("gives its shares where the courses stand in an order of their own", () => {
    // Scenarios come sorted by how strongly the room moves them: neither end may meet one level alone.
    for (let trial = 0; trial < 12; trial += 1) {
      const of = randomAsked(Infinity);
      const plays = Array.from({ length: 96 }, (_, at) => course(at / 95, 0));
      const outlook = outlookOf([{ weight: 1, plays }]);
      const wanted = drawn(of, outlook, true, random);
      expect(apart(testOutcomes(soFar(of), outlook, true), wanted)).toBeLessThan(tolerance);
    }
  });
});

describe("testOutcomes of what is known", () => {
  it.each([
    [38, { holds: 1, misses: 0 }],
    [37.01, { holds: 1, misses: 0 }],
    [36.99, { holds: 0, misses: 1 }],
    [41, { holds: 0, misses: 1 }],
  ])("decides for certain at a level of %s without any doubt", (mean, decided) => {
    const known = soFar({ mean, scale: 0, deviation: 0 });
    expect(testOutcomes(known, flat, false)).toEqual(decided);
    expect(testOutcomes(known, flat, true)).toEqual(decided);
  });

  it("gives a result of few degrees of freedom its long tails", () => {
    // One degree of freedom is Cauchy's distribution: half of it within one scale, where a normal
    // one has 0.683. Fifteen levels: 1/15.
    const cauchy = soFar({ mean: 38, scale: 1, degreesOfFreedom: 1, deviation: 0 });
    const found = testOutcomes(cauchy, flat, false);
    expect(Math.abs(found.holds - 0.5)).toBeLessThan(1 / 15);
    expect(found.holds + found.misses).toBeCloseTo(1, 12);
  });

  it("decides nothing on the window's edge with a doubt about it", () => {
    const edge = soFar({ mean: 37, scale: 0, deviation: 0.2 });
    expect(testOutcomes(edge, flat, false)).toEqual({ holds: 0, misses: 0 });
  });

  it("hardly moves a level many tests have settled", () => {
    const many = { mean: 37.8, scale: 0.5, own: { mean: 37.8, tests: 50 } };
    expect(testOutcomes(soFar(many), flat, false)).toEqual({ holds: 1, misses: 0 });
    const one = testOutcomes(soFar({ ...many, own: { mean: 37.8, tests: 1 } }), flat, false);
    expect(one.holds).toBeLessThan(1);
  });
});

describe("testOutcomes and scatter", () => {
  it("never lets more run-to-run scatter raise the share that holds", () => {
    // A stretch of offsets is met less surely the wider a symmetric doubt about a level inside it.
    const random = createRandom(72, "scatter");
    for (let trial = 0; trial < 25; trial += 1) {
      const of = { mean: random.uniform(36.5, 39.5), scale: random.uniform(0.1, 1) };
      const shares = [0, 0.1, 0.2, 0.3, 0.5, 0.8].map(
        (deviation) => testOutcomes(soFar({ ...of, deviation }), flat, false).holds,
      );
      expect(shares).toEqual(shares.toSorted((a, b) => b - a));
    }
  });

  it("decides more where the test shows what was only assumed of the level", () => {
    const of = soFar({ mean: 38, scale: 0.2, assumed: 0.6, deviation: 0.1 });
    expect(testOutcomes(of, flat, false)).toEqual({ holds: 0, misses: 0 });
    expect(testOutcomes(of, flat, true).holds).toBeGreaterThan(0.5);
  });
});
