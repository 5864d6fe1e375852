import { describe, expect, it } from "vitest";
import { lagScatter } from "../../src/container/lag-scatter.ts";
import { lagSensitivity } from "../../src/container/lag-sensitivity.ts";
import { searchLag } from "../../src/container/lag-search.ts";
import { createRandom } from "../simulator/random.ts";
import { course, warmingBath, warmingFood } from "./courses.ts";

const bath = course(0.5, 300, warmingBath);
const truth = course(2, 300, warmingFood(25));

/** Errors of the lag, and what is claimed for them, over repeated noise of correlation `keep` from reading to reading. */
const repeated = (keep: number) => {
  const random = createRandom(5, `scatter ${keep}`);
  return Array.from({ length: 60 }, () => {
    let error = random.normal(0, 0.1);
    const celsius = truth.celsius.map((value) => {
      error = keep * error + random.normal(0, 0.1 * Math.sqrt(1 - keep ** 2));
      return value + error;
    });
    const problem = { bath, food: { minutes: truth.minutes, celsius }, room: null };
    const { lag } = searchLag(problem)!;
    return { error: lag - 25, claimed: lagScatter(lagSensitivity(problem, lag)) };
  });
};

const meanClaim = (keep: number) =>
  repeated(keep).reduce((sum, { claimed }) => sum + claimed, 0) / 60;

describe("lagScatter", () => {
  it.each([0, 0.7])("is the spread of repeated fits, noise of correlation %d", (keep) => {
    // Constructed. Sixty repeats tell a standard deviation to about 9 %; the estimate of
    // correlated noise from one night is itself uncertain, hence a factor of 0.75 to 1.4.
    const fits = repeated(keep);
    const spread = Math.sqrt(fits.reduce((sum, { error }) => sum + error ** 2, 0) / fits.length);
    const claimed = fits.reduce((sum, fit) => sum + fit.claimed, 0) / fits.length;
    expect(claimed / spread).toBeGreaterThan(0.75);
    expect(claimed / spread).toBeLessThan(1.4);
  });

  it("is larger where the noise hangs together", () => {
    expect(meanClaim(0.7)).toBeGreaterThan(1.4 * meanClaim(0));
  });
});
