/**
 * When a set-up calls for another water test. The rules are common practice,
 * no source: separation in the first generation of a fresh starter is usual;
 * later, or twice in three, it is not; a season without a test, an appliance
 * that was moved and a container that was changed call for one too.
 */
import type { Appliance, Batch, Container, SetUp } from "../kitchen/kitchen.ts";
import { setUpKey } from "../kitchen/set-up.ts";
import { daysBetween, monthsBetween } from "./calendar-days.ts";
import type { DueReason, RecheckDue } from "./recheck-types.ts";
import { isOpen, isUsual, separatedLater, separatedTwice } from "./separation-due.ts";

/** Days; common practice, no source. */
const season = 92;

export interface TestedOn {
  readonly setUp: SetUp;
  /** ISO date on which the test began; null where nothing tells it. */
  readonly date: string | null;
}

export interface DueInput {
  /** In the log's order. */
  readonly batches: readonly Batch[];
  readonly tests: readonly TestedOn[];
  readonly appliances: readonly Pick<Appliance, "id" | "movedOn">[];
  readonly containers: readonly Pick<Container, "id" | "changedOn">[];
  /** ISO date. */
  readonly today: string;
}

/** Everything that is known of one set-up. */
interface Known {
  readonly setUp: SetUp;
  readonly batches: readonly Batch[];
  readonly tests: number;
  readonly lastTested: string | null;
}

const knownOf = ({ batches, tests }: DueInput, setUp: SetUp): Known => {
  const key = setUpKey(setUp);
  const own = tests.filter((one) => setUpKey(one.setUp) === key);
  const days = own.flatMap(({ date }) => (date === null ? [] : [date])).toSorted();
  return {
    setUp,
    batches: batches.filter((batch) => setUpKey(batch) === key),
    tests: own.length,
    lastTested: days.at(-1) ?? null,
  };
};

const neverTested = ({ tests, batches }: Known): DueReason[] =>
  tests === 0 && batches.length > 0 ? [{ code: "never-tested", batches: batches.length }] : [];

/** Only of a set-up in use: one that nobody cultures in may rest. */
const seasonPassed = ({ batches, lastTested }: Known, today: string): DueReason[] => {
  if (lastTested === null || daysBetween(lastTested, today) < season) return [];
  const used = batches.some(({ date }) => daysBetween(date, today) <= season);
  return used ? [{ code: "season", monthsAgo: monthsBetween(lastTested, today) }] : [];
};

/** A test whose day is not known cannot be shown to come after the change. */
const since = ({ tests, lastTested }: Known, date: string | null): date is string =>
  date !== null && tests > 0 && (lastTested === null || date > lastTested);

const changes = (known: Known, { appliances, containers }: DueInput): DueReason[] => {
  const { appliance, container } = known.setUp;
  const movedOn = appliances.find(({ id }) => id === appliance)?.movedOn ?? null;
  const changedOn = containers.find(({ id }) => id === container)?.changedOn ?? null;
  const reasons: DueReason[] = [];
  if (since(known, movedOn)) reasons.push({ code: "appliance-moved", date: movedOn });
  if (since(known, changedOn)) reasons.push({ code: "container-changed", date: changedOn });
  return reasons;
};

const usualOf = ({ batches, lastTested }: Known): RecheckDue["usual"] =>
  batches
    .filter((batch) => isUsual(batch) && isOpen(batch, lastTested))
    .flatMap(({ date, separated }) => (separated === null ? [] : [{ date, separated }]));

/**
 * What is to be said of one set-up; without reasons where no test is due.
 * A test counts as newer than a batch, or a move, of an earlier day only:
 * one that began on the same day may have been done before it.
 */
export const setUpDue = (input: DueInput, setUp: SetUp): RecheckDue => {
  const known = knownOf(input, setUp);
  const { appliance, setting, container } = setUp;
  const { batches, lastTested } = known;
  return {
    setUp: { appliance, setting, container },
    lastTested,
    reasons: [
      ...separatedLater(batches, lastTested),
      ...separatedTwice(batches, lastTested),
      ...neverTested(known),
      ...seasonPassed(known, input.today),
      ...changes(known, input),
    ],
    usual: usualOf(known),
  };
};

/**
 * Set-ups in use: those of the log, in its order; then the tested ones of
 * appliances of which the log says nothing.
 */
const inUse = ({ batches, tests }: DueInput): readonly SetUp[] => {
  const logged = new Set(batches.map(({ appliance }) => appliance));
  const others = tests.map(({ setUp }) => setUp).filter(({ appliance }) => !logged.has(appliance));
  return [...new Map([...batches, ...others].map((one) => [setUpKey(one), one])).values()];
};

/** Every set-up in use that calls for a water test, with the reasons. */
export const recheckDue = (input: DueInput): readonly RecheckDue[] =>
  inUse(input)
    .map((setUp) => setUpDue(input, setUp))
    .filter(({ reasons }) => reasons.length > 0);
