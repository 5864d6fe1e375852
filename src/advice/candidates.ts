import type { Setting, SetUp } from "../kitchen/kitchen.ts";
import { offeredSettings } from "../kitchen/offered-settings.ts";
import { setUpKey } from "../kitchen/set-up.ts";
import type { AdviceInput, DecidedSetUp } from "./advice-input.ts";
import type { Candidate, Chance } from "./advice-types.ts";
import { chanceOf } from "./chance.ts";
import type { CourseShape } from "./course-shape.ts";
import { expectedRun, expectedLevel } from "./expected.ts";
import { testsOf, type HeldTest, type Response } from "./response.ts";
import type { Basis, ExpectedLevel } from "./response-types.ts";
import { normalLevel } from "./tested-level.ts";

/** An appliance with everything that is known of it. */
export interface KnownAppliance {
  readonly input: AdviceInput;
  readonly response: Response;
  readonly shapeOf: (setUp: SetUp) => CourseShape;
}

/** Every setting the appliance offers with every container that may stand in it. */
export const candidatesOf = (known: KnownAppliance): readonly Candidate[] => {
  const { input, response } = known;
  const decided = new Map(input.setUps.map((one) => [setUpKey(one.setUp), one]));
  return response.containers.flatMap(({ container }) =>
    offeredSettings(response.appliance.control).map((setting) => {
      const setUp = { appliance: response.appliance.id, setting, container: container.id };
      const tested = decided.get(setUpKey(setUp));
      const predicted = predictedCandidate(setUp, known);
      const isJudged = tested !== undefined && tested.verdicts.length > 0;
      return isJudged && !tellsOfBathAlone(response, setUp)
        ? testedCandidate(tested, predicted, known)
        : predicted;
    }),
  );
};

/**
 * A level measured in the bath alone is the bath's; where food stands in jars,
 * that is not the food. A test that never settled has no level to mistake, and
 * keeps its verdict.
 */
const tellsOfBathAlone = (response: Response, setUp: SetUp): boolean => {
  const own = testsOf(response, setUp);
  return own.length > 0 && !own.some((test) => isFoodTest(response, test));
};

const isFoodTest = ({ containers }: Response, { settled, setUp }: HeldTest): boolean =>
  settled.place === "food" ||
  containers.some(({ container: { id, stands } }) => id === setUp.container && stands === "basin");

/**
 * A verdict of `holds` stands in the advice only where what is known of the
 * appliance otherwise (its other tests, how it follows the room) makes it as
 * likely as this (our choice): one night alone may have been a lucky one.
 */
const leastBacking = 0.9;

/** What its own tests say, as the verdicts say it, unless the rest speaks against `holds`. */
const testedCandidate = (
  tested: DecidedSetUp,
  predicted: Candidate,
  { shapeOf }: KnownAppliance,
): Candidate => {
  const level = normalLevel(tested);
  const { band } = shapeOf(tested.setUp);
  return {
    setUp: tested.setUp,
    basis: "tested",
    testIds: tested.testIds,
    level,
    band: level && moved(band, level),
    chances: tested.verdicts.map(({ probability, ceilingRisk, verdict }, at): Chance => {
      const other = predicted.chances[at]!;
      return verdict === "holds" && other.probability < leastBacking
        ? { ...other, verdict: "unproven" }
        : { probability, ceilingRisk, verdict };
    }),
  };
};

const predictedCandidate = (
  setUp: SetUp,
  { input: { requirements, confidence }, response, shapeOf }: KnownAppliance,
): Candidate => {
  const expected = expectedRun(response, setUp);
  const level = expectedLevel(expected);
  const shape = shapeOf(setUp);
  return {
    setUp,
    basis: basisOf(response, setUp),
    testIds: [],
    level,
    band: moved(shape.band, level),
    chances: requirements.map((requirement) =>
      chanceOf(requirement, expected, shape, { response, confidence }),
    ),
  };
};

const moved = (
  { low, high }: { readonly low: number; readonly high: number },
  { mean }: ExpectedLevel,
): Candidate["band"] => ({ low: mean + low, high: mean + high });

/**
 * Interpolated: this container was tested in the appliance at settings on both
 * sides of this one. Extrapolated: it was tested otherwise. Assumed: nothing
 * tested there, or another program, of which a program says nothing.
 */
export const basisOf = (
  response: Response,
  { setting, container }: SetUp,
): Exclude<Basis, "tested"> => {
  const { tests } = response;
  const { control } = response.appliance;
  if (tests.length === 0) return "assumed";
  const place = (one: Setting): number => {
    if (one.kind === "step") return one.celsius;
    if (one.kind === "mark" && control.kind === "marks") return control.marks.indexOf(one.mark);
    return 0;
  };
  if (setting.kind === "program") {
    const sameProgram = tests.some(
      ({ setUp: { setting: one } }) => one.kind === "program" && one.program === setting.program,
    );
    return sameProgram ? "extrapolated" : "assumed";
  }
  const around = tests.filter(
    (test) => test.setUp.container === container && isFoodTest(response, test),
  );
  const places = around.map(({ setUp }) => place(setUp.setting));
  const inside =
    places.some((one) => one <= place(setting)) && places.some((one) => one >= place(setting));
  return inside ? "interpolated" : "extrapolated";
};
