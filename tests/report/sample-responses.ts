/** Invented responses of the invented appliances, drawn from their candidates. */
import type { Candidate } from "../../src/advice/advice-types.ts";
import type { ResponseCurve, ResponseTerm, TestedPoint } from "../../src/advice/response-types.ts";
import { heldAt, settingsOf } from "./sample-candidates.ts";
import type { Known } from "./sample-candidates.ts";

export const curveOf = (container: string, all: readonly Candidate[]): ResponseCurve => ({
  container,
  points: all.flatMap(({ setUp, basis, level }) =>
    setUp.container === container && level !== null
      ? [{ setting: setUp.setting, basis, level }]
      : [],
  ),
});

export const pointsOf = ({ own, tested }: Known): readonly TestedPoint[] =>
  tested.flatMap(({ setUp, testIds }) =>
    testIds.map((testId, at) => ({
      testId,
      setting: setUp.setting,
      container: setUp.container,
      place: "food" as const,
      mean: setUp.container === "basin" ? 40.9 : (heldAt[own.id] ?? 38) + at * 0.2 - 0.1,
      standardUncertainty: at === 0 ? 0.12 : 0.31,
    })),
  );

export const termsOf = ({ own, tested, kitchen }: Known): readonly ResponseTerm[] => {
  const { control } = own;
  const steps = control.kind === "steps";
  const setting = tested[0]?.setUp.setting ?? settingsOf(own)[0] ?? { kind: "fixed" };
  const sharpened = tested.length > 0 ? 0.25 : 1;
  const term = (
    code: ResponseTerm["term"],
    mean: number,
    now: number,
    standardDeviation: number,
  ): ResponseTerm => ({
    term: code,
    prior: { mean, standardDeviation },
    now: { mean: now, standardDeviation: standardDeviation * sharpened },
  });
  return [
    term(
      { code: "level", at: steps ? 40 : null, setting: steps ? null : setting },
      39,
      heldAt[own.id] ?? 38,
      3,
    ),
    ...(steps ? [term({ code: "slope", per: "degree" }, 1, 0.97, 0.1)] : []),
    ...(control.kind === "marks" ? [term({ code: "slope", per: "mark" }, 3, 3.1, 1.5)] : []),
    term({ code: "room" }, 0.1, 0.07, 0.1),
    ...kitchen.containers.map(({ id }, at) =>
      term({ code: "share-lost", container: id }, 0.03, 0.02 + at * 0.01, 0.03),
    ),
  ];
};
