/** Invented candidates for the invented kitchen: levels and chances by plain formulas. */
import type { Candidate, Chance } from "../../src/advice/advice-types.ts";
import type { Basis, ExpectedLevel } from "../../src/advice/response-types.ts";
import type { Requirement } from "../../src/culture/verdict-types.ts";
import type { SetUpAnalysis } from "../../src/kitchen-analysis-types.ts";
import type { Appliance, Kitchen, Setting } from "../../src/kitchen/kitchen.ts";
import { setUpKey } from "../../src/kitchen/set-up.ts";

export interface Given {
  readonly kitchen: Kitchen;
  readonly requirements: readonly Requirement[];
  readonly setUps: readonly SetUpAnalysis[];
  readonly appliance: string | null;
}

/** Corrected hold means, as the invented nights were drawn. */
export const heldAt: Readonly<Record<string, number>> = {
  "warm-cooker": 41.3,
  "step-cooker": 38.3,
  bath: 40.7,
  box: 37.4,
  cupboard: 29,
};

/** Two-sided 95 % of Student's t with four degrees of freedom. */
const factor = 2.776;

export const levelOf = (mean: number, standardUncertainty: number): ExpectedLevel => ({
  mean,
  standardUncertainty,
  degreesOfFreedom: 4,
  low: mean - factor * standardUncertainty,
  high: mean + factor * standardUncertainty,
});

export const settingsOf = ({ control }: Appliance): readonly Setting[] => {
  if (control.kind === "fixed") return [{ kind: "fixed" }];
  if (control.kind === "programs")
    return control.programs.map((program) => ({ kind: "program", program }));
  if (control.kind === "marks") return control.marks.map((mark) => ({ kind: "mark", mark }));
  const count = Math.round((control.high - control.low) / control.step) + 1;
  return Array.from({ length: count }, (_, at) => ({
    kind: "step",
    celsius: Number((control.low + at * control.step).toFixed(3)),
  }));
};

/** Marks 3 degrees apart, steps 0.97 of their figure; food in air stands lower, in the basin a little higher. */
const awayFrom = (setting: Setting, from: Setting | undefined, at: number): number => {
  if (setting.kind === "step")
    return 0.97 * (setting.celsius - (from?.kind === "step" ? from.celsius : 38));
  return setting.kind === "fixed" ? 0 : 3 * (at - 2);
};
const stands: Readonly<Record<string, number>> = {
  "jars in water": 0,
  "jars in air": -1.6,
  basin: 0.3,
};

export const near = (probability: number): number => Math.min(Math.max(probability, 0.002), 0.995);
/** A logistic curve in place of the normal one. */
const upTo = (z: number): number => 1 / (1 + Math.exp(-1.702 * z));

const chanceAt = ({ mean, standardUncertainty: u }: ExpectedLevel, asked: Requirement): Chance => {
  const inside = upTo((asked.high - 0.4 - mean) / u) - upTo((asked.low + 0.4 - mean) / u);
  const probability = near(inside);
  return {
    probability,
    ceilingRisk: asked.ceiling === null ? null : near(1 - upTo((asked.ceiling - 0.5 - mean) / u)),
    verdict: probability >= 0.95 ? "holds" : probability <= 0.05 ? "misses" : "unproven",
  };
};

export interface Known extends Given {
  readonly own: Appliance;
  readonly tested: readonly SetUpAnalysis[];
}

const candidate = (known: Known, setting: Setting, container: string, at: number): Candidate => {
  const { kitchen, own, requirements, tested } = known;
  const setUp = { appliance: own.id, setting, container };
  const found = tested.find((one) => setUpKey(one.setUp) === setUpKey(setUp));
  const [first] = tested;
  const standing = (which: string | undefined): number =>
    stands[kitchen.containers.find(({ id }) => id === which)?.stands ?? "jars in water"] ?? 0;
  const away = awayFrom(setting, first?.setUp.setting, at);
  const mean =
    (heldAt[own.id] ?? 38) + away + standing(container) - standing(first?.setUp.container);
  const other = container === first?.setUp.container ? 0 : 0.35;
  const u = first === undefined ? 3.2 : 0.28 + 0.09 * Math.abs(away) + other;
  const level = levelOf(mean, found === undefined ? u : 0.3);
  const basis: Basis =
    first === undefined ? "assumed" : Math.abs(away) < 1.5 ? "interpolated" : "extrapolated";
  return {
    setUp,
    basis: found === undefined ? basis : "tested",
    testIds: found?.testIds ?? [],
    level,
    band: { low: mean - 0.5, high: mean + 0.5 },
    chances: requirements.map((asked, index) => found?.verdicts[index] ?? chanceAt(level, asked)),
  };
};

export const candidatesOf = (known: Known): readonly Candidate[] =>
  settingsOf(known.own).flatMap((setting, at) =>
    known.kitchen.containers.map(({ id }) => candidate(known, setting, id, at)),
  );
