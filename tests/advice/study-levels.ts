/** Expected levels of an appliance against fresh runs. */
import type { ApplianceAdvice } from "../../src/advice/advice-types.ts";
import type { Basis, ExpectedLevel } from "../../src/advice/response-types.ts";
import type { Culture } from "../../src/culture/culture.ts";
import type { SetUp } from "../../src/kitchen/kitchen.ts";
import { settingText } from "../../src/kitchen/setting.ts";
import { studentTCdf } from "../../src/stats/student-t.ts";
import type { Random } from "../simulator/random.ts";
import type { RespondingCase } from "../simulator/responding-case.ts";
import type { LevelRecord } from "./study-record.ts";

export const drawsPerCase = 14;
/** A set-up this far from a window counts a third as much as one in it, degC. */
const nearness = 2;
/** Those further off still come up now and then. */
const leastWeight = 0.02;

interface Said {
  readonly setUp: SetUp;
  readonly basis: Basis;
  readonly level: ExpectedLevel;
}

/** One fresh run for each of some set-ups, tested or not, more often near the culture's window. */
export function levelRecords(
  random: Random,
  responding: RespondingCase,
  advice: ApplianceAdvice,
): readonly LevelRecord[] {
  const all = saidLevels(advice);
  if (all.length === 0) return [];
  const records: LevelRecord[] = [];
  while (records.length < drawsPerCase) {
    const culture = random.choice(responding.cultures);
    const weighted = all.map((one) => [one, weightOf(one, culture)] as const);
    records.push(againstFreshRun(random, responding, random.weighted(weighted), culture));
  }
  return records;
}

const saidLevels = ({ appliance, curves }: ApplianceAdvice): readonly Said[] =>
  curves.flatMap(({ container, points }) =>
    points.map(({ setting, basis, level }) => ({
      setUp: { appliance, setting, container },
      basis,
      level,
    })),
  );

/** By what is said of it: chosen by its true level, a stated interval would no longer hold at its rate. */
function weightOf({ level: { mean } }: Said, { low, high }: Culture): number {
  const off = Math.max(0, low - mean, mean - high);
  return leastWeight + Math.exp(-((off / nearness) ** 2));
}

function againstFreshRun(
  random: Random,
  { truth }: RespondingCase,
  { setUp, basis, level }: Said,
  { hours }: Culture,
): LevelRecord {
  const fresh = truth.freshHoldMean(random, setUp, hours);
  const { mean, standardUncertainty, degreesOfFreedom, low, high } = level;
  return {
    setUp: setUpName(setUp),
    basis,
    mean,
    standardUncertainty,
    place: studentTCdf((fresh - mean) / standardUncertainty, degreesOfFreedom),
    inside: fresh >= low && fresh <= high,
    fresh,
  };
}

export const setUpName = ({ setting, container }: SetUp): string =>
  `${settingText(setting)}, ${container}`;
