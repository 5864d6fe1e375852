import { setUpKey } from "../kitchen/set-up.ts";
import type { AdviceInput, DecidedSetUp } from "./advice-input.ts";
import { recheckChart } from "./recheck-chart.ts";
import { isMove, recheckCultures } from "./recheck-cultures.ts";
import { levelDifference, runDeviation, type TestPair } from "./recheck-level.ts";
import { shapeDifferences } from "./recheck-shape.ts";
import type { Recheck, RecheckCulture, RecheckDifference, RecheckWord } from "./recheck-types.ts";
import { fitResponse, type HeldTest } from "./response.ts";

/**
 * Baseline against newest test, of every set-up that was tested twice or more
 * and settled both times; the oldest test is the baseline. Only one and the same
 * set-up is compared: what another setting would have given is the response
 * model's to say.
 */
export const recheckAll = (input: AdviceInput): readonly Recheck[] =>
  input.setUps.flatMap((tested) => {
    const tests = settledTests(input, tested);
    return tests.length < 2 ? [] : [recheck(input, tested, tests)];
  });

/** Those the set-up's verdict rests on, by the place most of them were measured in; oldest first. */
const settledTests = (
  { tests }: AdviceInput,
  { setUp, testIds }: DecidedSetUp,
): readonly HeldTest[] => {
  const own = tests.filter(
    (test): test is HeldTest =>
      test.settled !== null &&
      testIds.includes(test.id) &&
      setUpKey(test.setUp) === setUpKey(setUp),
  );
  const place = own.at(-1)?.settled.place;
  return own.filter(({ settled }) => settled.place === place);
};

const recheck = (input: AdviceInput, tested: DecidedSetUp, tests: readonly HeldTest[]): Recheck => {
  const [baseline, newest] = [tests[0]!, tests.at(-1)!];
  const appliance = input.kitchen.appliances.find(({ id }) => id === tested.setUp.appliance)!;
  const others = input.tests.filter(({ id }) => id !== newest.id);
  const pair: TestPair = {
    baseline,
    newest,
    sharedThermometer: isShared(baseline, newest, input),
    earlier: tests.slice(0, -1).map(({ settled }) => settled.level),
    before: fitResponse(appliance, { ...input, tests: others }),
  };
  const level = levelDifference(pair);
  const cultures = recheckCultures(pair, level, input);
  return {
    setUp: tested.setUp,
    baseline: { testId: baseline.id, startedAt: baseline.startedAt },
    newest: { testId: newest.id, startedAt: newest.startedAt },
    thermometer: pair.sharedThermometer ? "shared" : "changed",
    level,
    ...shapeDifferences(pair),
    word: overall(level, cultures),
    cultures,
    chart: recheckChart(tests, runDeviation(pair.before), tests.length > 2),
  };
};

/** Against no difference; `not moved` where every culture it could have held says so. */
const overall = (level: RecheckDifference, cultures: readonly RecheckCulture[]): RecheckWord => {
  const held = cultures.filter(({ margin }) => margin > 0);
  if (held.length > 0 && held.every(({ word }) => word === "not moved")) return "not moved";
  return isMove(level) ? "moved" : "cannot tell";
};

/** Named, the same in both tests, and not checked anew from the one to the other. */
const isShared = (a: HeldTest, b: HeldTest, { kitchen }: AdviceInput): boolean => {
  const id = a.settled.evidence.thermometerId;
  if (id === null || id !== b.settled.evidence.thermometerId) return false;
  const checks = kitchen.thermometers.find((one) => one.id === id)?.checks ?? [];
  const [from, to] = [a.startedAt, b.startedAt];
  if (from === null || to === null) return checks.length === 0;
  return !checks.some(({ date }) => {
    const day = date === null ? null : Date.parse(`${date}T12:00:00Z`);
    return day !== null && day > from && day < to;
  });
};
