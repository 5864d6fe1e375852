import type { Appliance } from "../kitchen/kitchen.ts";
import { offeredSettings } from "../kitchen/offered-settings.ts";
import type { AdviceInput } from "./advice-input.ts";
import type { ApplianceAdvice, Candidate, CultureAdvice } from "./advice-types.ts";
import { basisOf, candidatesOf, type KnownAppliance } from "./candidates.ts";
import { answerOf, choose, type Choice } from "./choose.ts";
import { courseShapes } from "./course-shape.ts";
import { obstaclesFor } from "./obstacles.ts";
import { scatterPrior } from "./response-prior.ts";
import { expectedRun, expectedLevel } from "./expected.ts";
import { fitResponse, testsOf, type HeldTest, type Response } from "./response.ts";
import type { ResponseCurve, ResponseTerm, TestedPoint } from "./response-types.ts";
import { steadyRoom } from "./steady-room.ts";
import { resolutionUncertainty } from "../thermometer/budget.ts";

/** One appliance advised on, with what the rest of the advice needs of it. */
export interface AdvisedAppliance {
  readonly known: KnownAppliance;
  readonly candidates: readonly Candidate[];
  /** One per requirement; null where it offers no set-up. */
  readonly choices: readonly (Choice | null)[];
}

export const adviseAppliance = (appliance: Appliance, input: AdviceInput): AdvisedAppliance => {
  const response = fitResponse(appliance, input);
  const known: KnownAppliance = { input, response, shapeOf: courseShapes(response) };
  const candidates = candidatesOf(known);
  const choices = input.requirements.map((requirement, at) => choose(candidates, at, requirement));
  return { known, candidates, choices };
};

/** The appliance's part of the advice; which other one serves a culture better is left to `elsewhere`. */
export const applianceAdvice = (
  { known, candidates, choices }: AdvisedAppliance,
  elsewhere: (at: number) => CultureAdvice["elsewhere"],
): ApplianceAdvice => {
  const { response, input } = known;
  const cultures = input.requirements.map((requirement, at): CultureAdvice => {
    const choice = choices[at]!;
    const answer = choice === null ? "unknown" : answerOf(choice, input.confidence);
    return {
      culture: requirement.culture,
      answer,
      best: choice?.best ?? null,
      chance: choice?.chance ?? null,
      change: choice?.change ?? "first test",
      from: choice?.from ?? null,
      steadyRoom: choice === null ? null : steadyRoom(known, choice, requirement),
      obstacles: obstaclesFor(known, candidates, choice, requirement),
      elsewhere: answer === "can" ? null : elsewhere(at),
    };
  });
  return {
    appliance: response.appliance.id,
    tests: response.tests.map(testedPoint),
    terms: termsOf(response),
    scatter: { prior: scatterPrior.standardDeviation, now: response.fit.scale },
    curves: response.containers.map(({ container }) => curveOf(response, container.id)),
    candidates: candidates.filter(isWorthNaming),
    cultures,
  };
};

/** Less likely than this for every culture, a set-up is not worth a line. */
const worthNaming = 0.01;

const isWorthNaming = ({ basis, chances }: Candidate): boolean =>
  basis === "tested" || chances.some(({ probability }) => probability > worthNaming);

const testedPoint = ({ id, setUp, settled }: HeldTest): TestedPoint => {
  const { thermometer, resolution, hold } = settled.evidence;
  return {
    testId: id,
    setting: setUp.setting,
    container: setUp.container,
    place: settled.place,
    mean: settled.level,
    standardUncertainty: Math.hypot(
      thermometer.standardUncertainty,
      resolutionUncertainty(resolution),
      hold.meanUncertainty,
    ),
  };
};

const termsOf = ({ design: { terms }, fit }: Response): readonly ResponseTerm[] =>
  terms.map(({ term, prior }, index) => {
    const factor = fit.covarianceFactor[index * terms.length + index]!;
    return {
      term,
      prior,
      now: {
        mean: fit.coefficients[index]!,
        standardDeviation: fit.scale * Math.sqrt(Math.max(0, factor)),
      },
    };
  });

const curveOf = (response: Response, container: string): ResponseCurve => ({
  container,
  points: offeredSettings(response.appliance.control).map((setting) => {
    const setUp = { appliance: response.appliance.id, setting, container };
    return {
      setting,
      basis: testsOf(response, setUp).length > 0 ? "tested" : basisOf(response, setUp),
      level: expectedLevel(expectedRun(response, setUp)),
    };
  }),
});
