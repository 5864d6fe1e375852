import { assumedThermometer } from "../thermometer/budget.ts";
import { statementAt } from "../thermometer/correction-at.ts";
import { endedByPerson } from "../culture/verdict.ts";
import { runScatter, type RunScatter } from "../culture/run-to-run.ts";
import type { Requirement } from "../culture/verdict-types.ts";
import type { SetUp } from "../kitchen/kitchen.ts";
import { setUpKey } from "../kitchen/set-up.ts";
import type { AdviceInput } from "./advice-input.ts";
import type { Candidate } from "./advice-types.ts";
import type { AdvisedAppliance } from "./appliance-advice.ts";
import { bestThermometer, leastDoubtful } from "./best-thermometer.ts";
import { heatEnds } from "./chance.ts";
import type { NextTest } from "./next-types.ts";
import { readingInterval } from "./reading-interval.ts";
import { expectedRun } from "./expected.ts";
import { testsOf } from "./response.ts";
import type { ThermometerDoubt } from "../culture/thermometer-doubt.ts";
import { testOutcomes, type Outcome, type TestedSoFar } from "./test-outcomes.ts";

/** A night's hold, hours (common practice, no source). */
const night = 10;
/** A test that takes the day as well must promise so much more: a wait, and an appliance taken. */
const worthTheDay = 0.15;
/** A culture that nothing holds yet counts double where it would get a proven set-up (our choice). */
const worth = ({ gain, served }: Pick<NextTest, "gain" | "served">): number => gain + 2 * served;
/** Less than this is not worth a night. */
const leastGain = 0.1;
const mostTests = 5;

/**
 * Water tests worth doing, most telling first: for every set-up that would
 * serve a culture if anything does, or whose verdict is open, the test is
 * simulated for a night and for the culture's full hours.
 */
export const nextTests = (
  advised: readonly AdvisedAppliance[],
  input: AdviceInput,
): readonly NextTest[] => {
  const tested = advised.flatMap(({ candidates }) =>
    candidates.filter(({ basis }) => basis === "tested"),
  );
  const unserved = input.requirements.map(
    (_, at) => !tested.some(({ chances }) => chances[at]!.verdict === "holds"),
  );
  const tests = advised.flatMap((one) =>
    worthTesting(one).map((candidate) => plan(candidate, one, unserved)),
  );
  return tests
    .filter((test) => worth(test) >= leastGain)
    .toSorted((a, b) => worth(b) - worth(a))
    .slice(0, mostTests);
};

/** The best set-up for each culture unless it is proven, and tested ones with an open verdict. */
const worthTesting = ({ choices, candidates }: AdvisedAppliance): readonly Candidate[] => {
  const chosen = choices.flatMap((choice) =>
    choice === null || (choice.best.basis === "tested" && choice.chance.verdict !== "unproven")
      ? []
      : [choice.best],
  );
  const open = candidates.filter(
    ({ basis, chances }) =>
      basis === "tested" && chances.some(({ verdict }) => verdict === "unproven"),
  );
  const all = new Map([...chosen, ...open].map((one) => [setUpKey(one.setUp), one]));
  return [...all.values()];
};

const plan = (
  candidate: Candidate,
  advised: AdvisedAppliance,
  unserved: readonly boolean[],
): NextTest => {
  const { input, response, shapeOf } = advised.known;
  const { requirements } = input;
  const { setUp, basis } = candidate;
  const soFar = testedSoFar(candidate, advised);
  const plans = durations(requirements).map((hours) =>
    planFor(hours, { candidate, advised, soFar, unserved }),
  );
  const best = plans.reduce((a, b) => (worth(b) >= worth(a) + worthTheDay ? b : a));
  const nearest = testsOf(response, setUp).at(-1) ?? shapeOf(setUp).reference;
  return {
    setUp,
    basis,
    ...best,
    daytime: best.hours > night,
    interval: readingInterval(nearest?.settled.evidence.hold ?? null, best.hours),
    thermometer: bestThermometer(input, soFar.expected.mean, likeliestOf(candidate, requirements)),
  };
};

/** A night, and the whole time of the culture that asks for the longest where a night does not do. */
const durations = (requirements: readonly Requirement[]): readonly number[] => {
  const longest = Math.max(0, ...requirements.map(({ hours }): number => hours));
  return longest > night ? [night, longest] : [night];
};

interface Planning {
  readonly candidate: Candidate;
  readonly advised: AdvisedAppliance;
  readonly soFar: TestedSoFar;
  readonly unserved: readonly boolean[];
}

type Plan = Pick<NextTest, "hours" | "gain" | "served" | "outcomes">;

const planFor = (hours: number, planning: Planning): Plan => {
  const { candidate, advised, soFar, unserved } = planning;
  const { input, response } = advised.known;
  let [gain, served] = [0, 0];
  const outcomes = input.requirements.map((requirement, at) => {
    const chance = candidate.chances[at]!;
    const whole = hours >= requirement.hours;
    const simulated = testOutcomes(soFar, soFar.shape.outlook(requirement), whole);
    const ends = heatEnds(response, requirement.hours) !== null;
    const found = ends ? endingAgain(simulated, whole) : simulated;
    if (isOpen(planning, at)) gain += found.holds + found.misses;
    if (unserved[at]!) served += found.holds;
    const { holds, misses } = found;
    return { culture: requirement.culture, now: chance.probability, holds, misses };
  });
  return { hours, gain, served, outcomes };
};

/**
 * Where a test's heat ended before the culture's hours were over: a shorter one
 * decides nothing, and one of the full hours proves it only if it was the person
 * who ended the other.
 */
const endingAgain = ({ holds, misses }: Outcome, whole: boolean): Outcome =>
  whole ? { holds: endedByPerson * holds, misses } : { holds: 0, misses: 0 };

/** Of an untested set-up only what it would be chosen for: that it misses another culture is no news. */
const isOpen = ({ candidate, advised: { choices, known } }: Planning, at: number): boolean => {
  const { probability, verdict } = candidate.chances[at]!;
  if (candidate.basis === "tested") return verdict === "unproven";
  const { confidence } = known.input;
  const isChosen = choices[at]?.best === candidate;
  return isChosen && probability < confidence && probability > 1 - confidence;
};

/** A tested set-up's next run lies about the mean of its tests; any other about what the response expects. */
const testedSoFar = (
  { setUp }: Candidate,
  { known: { input, response, shapeOf } }: AdvisedAppliance,
): TestedSoFar => {
  const tested = input.setUps.find((one) => setUpKey(one.setUp) === setUpKey(setUp));
  const telling = testsOf(response, setUp).some(({ settled }) => !settled.tooLittle);
  const expected = expectedRun(response, setUp);
  const common = {
    shape: shapeOf(setUp),
    scatter: scatterIn(input, setUp),
    confidence: input.confidence,
  };
  if (tested === undefined || tested.mean === null || !telling) {
    return {
      ...common,
      own: null,
      expected: { ...expected, thermometer: measuredWith(input, expected.mean) },
    };
  }
  const { mean, runToRun, testIds } = tested;
  return {
    ...common,
    own: { mean, tests: testIds.length },
    expected: { ...expected, mean, scale: runToRun, degreesOfFreedom: Infinity, room: 0 },
  };
};

/** A first test leaves open what its own thermometer does: the best of the kitchen, else one nobody described. */
const measuredWith = ({ thermometers }: AdviceInput, level: number): ThermometerDoubt => {
  const best = leastDoubtful(thermometers, level);
  const { standardUncertainty, accuracy } =
    best === null ? assumedThermometer : statementAt(best.model, level);
  return { standardUncertainty, halfWidth: accuracy };
};

const scatterIn = ({ setUps }: AdviceInput, { appliance }: SetUp): RunScatter =>
  setUps.find(({ setUp }) => setUp.appliance === appliance)?.scatter ?? runScatter([]);

/** Window of the culture it is likeliest to serve: what the thermometer has to be good enough for. */
const likeliestOf = ({ chances }: Candidate, requirements: readonly Requirement[]): Requirement =>
  requirements.reduce((a, b, at) =>
    chances[at]!.probability > chances[requirements.indexOf(a)]!.probability ? b : a,
  );
