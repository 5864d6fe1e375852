/** Clauses that several kinds of advice share. */
import type {
  ApplianceAdvice,
  Candidate,
  Chance,
  CultureAdvice,
} from "../../advice/advice-types.ts";
import type { KitchenAnalysis } from "../../kitchen-analysis-types.ts";
import { askedRange } from "../temperature-text.ts";
import type { Writing } from "../writing.ts";
import { obstacleText } from "./obstacles.ts";
import { probabilityText } from "./probability.ts";

export interface Context {
  readonly analysis: KitchenAnalysis;
  readonly appliance: ApplianceAdvice;
  readonly advice: CultureAdvice;
  readonly writing: Writing;
}

export const testAsked = "test it with water first";

export type Known = Context & { readonly best: Candidate; readonly chance: Chance };

export const joined = (parts: readonly (string | null)[], between = "; "): string =>
  parts.filter((part) => part !== null).join(between);

/** The most telling, as clauses joined; null where there is none to tell. */
export const obstacles = (
  { analysis, advice, writing }: Context,
  most: number,
  untold: readonly string[] = [],
): string | null => {
  const told = advice.obstacles.filter(({ code }) => !untold.includes(code)).slice(0, most);
  return told.length === 0
    ? null
    : told.map((one) => obstacleText(one, analysis.kitchen, writing)).join(", and ");
};

export const steadyRoom = ({ advice, analysis, writing }: Context): string | null => {
  if (advice.steadyRoom === null) return null;
  const { low, high, probability } = advice.steadyRoom;
  const likely = probabilityText(probability, analysis.confidence, writing.space);
  return `with the room kept within ${askedRange(writing, low, high)} it would be ${likely}`;
};
