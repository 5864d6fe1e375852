import type { ReadProbe } from "../probe-night.ts";
import { runScatter, type RunScatter } from "../culture/run-to-run.ts";
import type { WaterTest } from "../kitchen/kitchen.ts";
import { setUpKey } from "../kitchen/set-up.ts";
import type { ProbeRole } from "../readings/series.ts";
import { mean } from "../stats/summary.ts";
import { tooLittle } from "../culture/verdict.ts";

/** A water test with its nights. */
export interface TestNights {
  readonly test: WaterTest;
  readonly probes: readonly ReadProbe[];
}

/** Probes that a verdict is about: in the food's place, else in the bath. */
export const judgedProbes = <Probe extends Pick<ReadProbe, "series">>(
  probes: readonly Probe[],
): readonly Probe[] => {
  const food = probes.filter(({ series }) => series.role === "food");
  return food.length > 0 ? food : probes.filter(({ series }) => series.role === "bath");
};

/** Mean of the hold means of a test's judged probes, degC; null where none settled. */
export const holdMean = (probes: readonly Pick<ReadProbe, "series" | "night">[]): number | null => {
  const means = judgedProbes(probes).flatMap(({ night }) =>
    night.hold === null ? [] : [night.hold.mean],
  );
  return means.length === 0 ? null : mean(means);
};

/** Tests by set-up, in the order in which the set-ups were first tested. */
export const bySetUp = <Test extends { readonly test: WaterTest }>(
  tests: readonly Test[],
): readonly (readonly Test[])[] => {
  const groups = new Map<string, Test[]>();
  for (const one of tests) {
    const key = setUpKey(one.test);
    const group = groups.get(key) ?? [];
    groups.set(key, group);
    group.push(one);
  }
  return [...groups.values()];
};

/** 2: enough hold to prove something; 1: some; 0: none. */
const rank = ({ probes }: TestNights): number =>
  Math.max(
    0,
    ...judgedProbes(probes).map(({ night: { hold } }) =>
      hold === null ? 0 : tooLittle(hold) ? 1 : 2,
    ),
  );

/**
 * The tests of a set-up that tell its level: those with enough hold to prove
 * something; where there are none, those that settled at all; else all. Of these
 * only those with a probe in the food, if there are any, else those with one in
 * the bath: food stands off from its bath, so the levels of both are not to be
 * mixed.
 */
export const tellingTests = <Test extends TestNights>(group: readonly Test[]): readonly Test[] => {
  const best = Math.max(...group.map(rank));
  const telling = group.filter((one) => rank(one) === best);
  const measured = (place: ProbeRole) =>
    telling.filter(({ probes }) => probes.some(({ series }) => series.role === place));
  return [measured("food"), measured("bath")].find((tests) => tests.length > 0) ?? telling;
};

/** Hold means of those tests, degC. */
export const setUpLevels = (group: readonly TestNights[]): readonly number[] =>
  tellingTests(group)
    .map(({ probes }) => holdMean(probes))
    .filter((level) => level !== null);

/** How far runs of a set-up of this appliance scatter, by those of its set-ups that were repeated. */
export const applianceScatter = (appliance: string, tests: readonly TestNights[]): RunScatter =>
  runScatter(bySetUp(tests.filter(({ test }) => test.appliance === appliance)).map(setUpLevels));
