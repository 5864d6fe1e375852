/** The few words with which a kitchen's report begins: what holds, what to change, what is open. */
import type { ApplianceAdvice, Obstacle } from "../../advice/advice-types.ts";
import type { NextTest } from "../../advice/next-types.ts";
import type { Recheck } from "../../advice/recheck-types.ts";
import type { KitchenAnalysis } from "../../kitchen-analysis-types.ts";
import type { Changed, Tested } from "../kitchen-standing.ts";
import { expectedTemperature } from "../temperature-text.ts";
import { duration } from "../time-text.ts";
import type { Writing } from "../writing.ts";
import { actionText } from "./advice-actions.ts";
import { sentence } from "./everyday-names.ts";
import { obstacleText } from "./obstacles.ts";
import { baselineDay, warmerText } from "./recheck.ts";
import { theSetUp, withinTheAppliance } from "./set-up-phrases.ts";
import { setUpKey } from "./set-ups.ts";

/** "at 38 °C (100.4 °F), jars in water". */
export const whereTested = (
  { setUp }: Tested,
  { kitchen }: KitchenAnalysis,
  writing: Writing,
): string => withinTheAppliance(kitchen, setUp.setUp, writing);

/** What speaks against relying on a set-up that holds by its own tests: "but its own test alone would ..."; null where nothing does. */
export const againstIt = (
  { setUp }: Tested,
  advice: ApplianceAdvice | null,
  { kitchen }: KitchenAnalysis,
  writing: Writing,
): string | null => {
  const against = advice?.cultures
    .flatMap(({ obstacles }) => obstacles)
    .find((one) => one.code === "stands-alone" && setUpKey(one.setUp) === setUpKey(setUp.setUp));
  return against === undefined ? null : `but ${obstacleText(against, kitchen, writing)}`;
};

/** Before the culture's name: "Set it to 43 °C (109.4 °F), straight in the basin as tested: should hold". */
export const changeText = (
  { advice }: Changed,
  { kitchen }: KitchenAnalysis,
  writing: Writing,
): string => {
  const action = actionText(advice, advice.best, kitchen, writing, [], "it");
  const likely = advice.answer === "can" ? "should hold" : "may hold";
  return sentence(`${action}: ${likely}`).slice(0, -1);
};

/** After it: ", expected at 43.0 °C (109.5 °F)". */
export const expectedText = ({ advice: { best } }: Changed, writing: Writing): string =>
  best.level === null
    ? ""
    : `, expected at ${expectedTemperature(writing, best.level.mean, best.level.standardUncertainty)}`;

/** What the figures in brackets are. */
export const chancesText =
  "In brackets: how likely the culture’s window is held for all its hours.";

/** Before any batch in what nobody tested. */
export const changeProviso =
  "A change named here was not tested: test it once with water before trusting a batch to it.";

type Disagreement = Extract<Obstacle, { readonly code: "tests-disagree" }>;

/** Each set-up of an appliance whose tests disagree, once. */
export const disagreementTexts = (
  advice: ApplianceAdvice | null,
  { kitchen }: KitchenAnalysis,
  writing: Writing,
): readonly string[] => {
  const found = (advice?.cultures ?? []).flatMap(({ obstacles }) =>
    obstacles.filter((one): one is Disagreement => one.code === "tests-disagree"),
  );
  const texts = found.map(
    (one) =>
      `${sentence(obstacleText(one, kitchen, writing))} Find out what was different, and test it again.`,
  );
  return [...new Set(texts)];
};

/** To stand after "Moved": "since 2026-03-14: at mark 3, jars on the rack, it now holds 1.2 °C (2.2 °F) colder". */
export const movedText = (
  recheck: Recheck,
  { kitchen }: KitchenAnalysis,
  writing: Writing,
): string =>
  `since ${baselineDay(recheck)}: ${withinTheAppliance(kitchen, recheck.setUp, writing)}, it now holds ${warmerText(recheck.level, writing)}`;

/** "the adjustable cooker at 43 °C (109.4 °F), straight in the basin, for 10 h". */
export const nextTestText = (
  { setUp, hours }: NextTest,
  { kitchen }: KitchenAnalysis,
  writing: Writing,
): string =>
  `${theSetUp(kitchen, setUp, writing)}, for ${duration(hours * 60, writing.space)} once it is warm`;
