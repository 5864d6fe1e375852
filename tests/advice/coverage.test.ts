import { describe, expect, it } from "vitest";
import { studyCase } from "./study-case.ts";
import { coverage, type Count } from "./study-judges.ts";
import { fewestAt, mostAt } from "./study-limits.ts";
import { drawsPerCase } from "./study-levels.ts";
import type { LevelRecord } from "./study-record.ts";

/**
 * Expected levels against fresh runs of simulated appliances with known response
 * (tests/simulator/responding-case.ts), the whole way from logger texts. Asked:
 * stated intervals hold at their rate to within 3 points. Draws of one appliance
 * go together, so the binomial limits are those of as many trials as there are
 * appliances. The long study, `npm run study:advice`, says it more sharply.
 */
const appliances = 40;
const firstSeed = 52_001;
const allowed = 0.03;

const records: Awaited<ReturnType<typeof studyCase>>[] = [];
for (let index = 0; index < appliances; index += 1) {
  // oxlint-disable-next-line no-await-in-loop -- one case at a time keeps memory small
  records.push(await studyCase(firstSeed + index));
}
const levels = records.flatMap((one): readonly LevelRecord[] => one.levels);

const share = ({ met, of }: Count): number => met / of;
const least = (asked: number): number => fewestAt(asked - allowed, appliances) / appliances;
const most = (asked: number): number => mostAt(asked + allowed, appliances) / appliances;

describe("expected levels", () => {
  it("are given for every appliance, tested or not", () => {
    expect(levels.length).toBe(drawsPerCase * appliances);
    expect(new Set(levels.map(({ basis }) => basis)).size).toBe(4);
  });

  it("hold fresh runs at their stated rates", () => {
    const { at50, at80, said } = coverage(levels);
    for (const [asked, found] of [
      [0.5, at50],
      [0.8, at80],
    ] as const) {
      expect(share(found)).toBeGreaterThanOrEqual(least(asked));
      expect(share(found)).toBeLessThanOrEqual(most(asked));
    }
    expect(share(said)).toBeGreaterThanOrEqual(least(0.95));
  });

  it("say as low and high what their distribution says", () => {
    const { said, at95 } = coverage(levels);
    expect(said).toEqual(at95);
  });
});
