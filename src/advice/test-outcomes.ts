import { futureRun, type RunScatter } from "../culture/run-to-run.ts";
import type { WeightedPlays } from "../culture/probability.ts";
import { verdictWord } from "../culture/verdict.ts";
import { effectiveDegreesOfFreedom } from "../stats/effective-degrees-of-freedom.ts";
import { studentTQuantile } from "../stats/student-t.ts";
import { probabilityAt } from "./chance.ts";
import type { CourseOutlook, CourseShape } from "./course-shape.ts";
import { gatherPlays, type GatheredPlays } from "./gathered-plays.ts";
import type { Expected } from "./expected.ts";

/** What a further test of a set-up would be added to. */
export interface TestedSoFar {
  /** Mean of its hold means and how many; null where there is none yet. */
  readonly own: { readonly mean: number; readonly tests: number } | null;
  /** Its thermometer is what that of the test and those before leave open. */
  readonly expected: Expected;
  readonly shape: CourseShape;
  readonly scatter: RunScatter;
  readonly confidence: number;
}

/** How likely the verdict after the test is to be decided. */
export interface Outcome {
  readonly holds: number;
  readonly misses: number;
}

/** Results of the test that are looked at: even quantiles of what is expected. */
const levelCount = 15;
/** Each with so many courses, where the test would show the whole of one. */
const courseCount = 6;

/**
 * Even quantiles of what is expected: Student's t and the normal parts taken as
 * one t, degrees of freedom by Welch and Satterthwaite (JCGM 100:2008, G.4.1).
 *
 * @param shown deviation of what only this test would show of the level, degC
 */
const levels = ({ mean, scale, ...expected }: Expected, shown: number): readonly number[] => {
  const normal = Math.hypot(expected.room, shown);
  const degreesOfFreedom = effectiveDegreesOfFreedom([
    { standardUncertainty: scale, degreesOfFreedom: expected.degreesOfFreedom },
    { standardUncertainty: normal, degreesOfFreedom: Infinity },
  ]);
  const spread = Math.hypot(scale, normal);
  return Array.from({ length: levelCount }, (_, index) => {
    return mean + spread * studentTQuantile((index + 0.5) / levelCount, degreesOfFreedom);
  });
};

/**
 * Simulates a test: its result is drawn from what is expected, the verdict is
 * made as it would be, and the words are counted (preposterior analysis; Raiffa
 * and Schlaifer, Applied Statistical Decision Theory, from memory).
 *
 * @param outlook what the culture's hours may look like
 * @param whole the test lasts the culture's full hours, so that it shows one of these courses,
 *   and what was only assumed of their level
 */
export const testOutcomes = (
  soFar: TestedSoFar,
  outlook: CourseOutlook,
  whole: boolean,
): Outcome => {
  const { own, expected, shape, scatter, confidence } = soFar;
  const tests = (own?.tests ?? 0) + 1;
  const next = futureRun(scatter, tests).value;
  const shown = whole ? shape.assumedDeviation : 0;
  const left = { ...shape, assumedDeviation: shape.assumedDeviation - shown };
  let [holds, misses, count] = [0, 0, 0];
  for (const [index, level] of levels(expected, shown).entries()) {
    const mean = own === null ? level : (own.tests * own.mean + level) / tests;
    const after = { ...expected, mean, scale: next, degreesOfFreedom: Infinity, room: 0 };
    for (const seen of whole ? someCourses(outlook.parts, index) : [outlook.gathered]) {
      const { probability } = probabilityAt(after, left, seen);
      const word = verdictWord(probability, confidence);
      holds += Number(word === "holds");
      misses += Number(word === "misses");
      count += 1;
    }
  }
  return { holds: holds / count, misses: misses / count };
};

/** Courses stand in an order; with this stride, prime to the levels, low levels meet its later ones as well. */
const levelStride = 7;

/** Some of the courses from all through their order, each alone, others for each level. */
const someCourses = (plays: readonly WeightedPlays[], level: number): readonly GatheredPlays[] =>
  Array.from({ length: courseCount }, (_, course) => {
    const at = course * levelCount + ((level * levelStride) % levelCount) + 0.5;
    return gatherPlays(
      plays.map(({ weight, plays: all }) => ({
        weight,
        plays: [all[Math.floor((at / (levelCount * courseCount)) * all.length)]!],
      })),
    );
  });
