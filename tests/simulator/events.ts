/** What happens during a water test: each of these in 10 to 15 % of the tests. */
import type { Random } from "./random.ts";
import type { Spell } from "./run.ts";

export interface TestPlan {
  /** Logger's first and last reading, seconds from switch-on. */
  readonly logFrom: number;
  readonly logTo: number;
  /** Program that switches itself off; Infinity where there is none. */
  readonly switchOff: number;
}

export interface Disturbances {
  readonly lidOpen: readonly Spell[];
  /** The probe hangs in the room's air meanwhile. */
  readonly probeOut: readonly Spell[];
  readonly powerCuts: readonly Spell[];
  /** The probe was taken out before the logger stopped; null where it was not. */
  readonly pulledAt: number | null;
}

export function sampleTestPlan(random: Random, canSwitchOff: boolean): TestPlan {
  const hours = random.weighted<() => number>([
    [() => random.uniform(7, 14), 70],
    [() => random.uniform(3, 7), 12],
    [() => random.uniform(14, 30), 18],
  ])();
  const idle = random.chance(0.15) ? random.uniform(5, 90) * 60 : random.uniform(0, 120);
  const late = random.chance(0.04) ? random.uniform(10, 50) * 60 : -idle;
  const logTo = Math.round(hours * 3600);
  const switchOff = canSwitchOff ? random.uniform(0.45, 0.95) * logTo : Infinity;
  return { logFrom: Math.round(late), logTo, switchOff };
}

/** Disturbances inside the hold, `from` to `to`, clear of both ends and of one another. */
export function sampleDisturbances(
  random: Random,
  hold: { readonly from: number; readonly to: number; readonly logTo: number },
): Disturbances {
  const lid = random.chance(0.13)
    ? spellWithin(random, hold, 0.1, 0.45, random.uniform(1, 10))
    : [];
  const cut = random.chance(0.12)
    ? spellWithin(random, hold, 0.5, 0.75, random.uniform(10, 90))
    : [];
  const out = random.chance(0.5) ? lid : [];
  const canPull = hold.to === hold.logTo && hold.to - hold.from > 5400;
  const pulledAt =
    random.chance(0.13) && canPull ? Math.round(hold.logTo - random.uniform(2, 30) * 60) : null;
  return { lidOpen: lid, probeOut: out, powerCuts: cut, pulledAt };
}

/** One spell that starts between two shares of the hold; none where the hold is too short for it. */
function spellWithin(
  random: Random,
  hold: { readonly from: number; readonly to: number },
  earliest: number,
  latest: number,
  minutes: number,
): readonly Spell[] {
  const length = hold.to - hold.from;
  const start = Math.round(hold.from + length * random.uniform(earliest, latest));
  if (length < 3 * 3600 || length * 0.2 < minutes * 60) return [];
  return [[start, start + Math.round(minutes * 60)]];
}
