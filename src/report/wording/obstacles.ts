/** Why an appliance does not serve a culture, or not surely: a clause each, the appliance as "it". */
import type { Obstacle } from "../../advice/advice-types.ts";
import type { Kitchen, SetUp } from "../../kitchen/kitchen.ts";
import { percent } from "../number-format.ts";
import { askedTemperature, difference, perHour, temperature } from "../temperature-text.ts";
import { duration } from "../time-text.ts";
import type { Writing } from "../writing.ts";
import { atSetting, theContainer, withinTheAppliance } from "./set-up-phrases.ts";

type Of<Code extends Obstacle["code"]> = Extract<Obstacle, { readonly code: Code }>;
type Names = Pick<Kitchen, "appliances" | "containers">;
type Clauses = {
  readonly [Code in Obstacle["code"]]: (
    obstacle: Of<Code>,
    kitchen: Names,
    writing: Writing,
  ) => string;
};

/** Can it be set to anything else than this? */
const canBeSet = ({ appliances }: Names, { appliance, setting }: SetUp): boolean => {
  const control = appliances.find(({ id }) => id === appliance)?.control;
  if (control === undefined || setting.kind === "fixed") return false;
  if (control.kind === "programs") return control.programs.length > 1;
  return control.kind === "marks" ? control.marks.length > 1 : true;
};

/** Said where there are others it could be in. */
const inWhich = (kitchen: Names, setUp: SetUp): string =>
  kitchen.containers.length > 1 ? ` (${theContainer(kitchen, setUp)})` : "";

const tooFar = (
  { setUp, by }: Of<"too-warm-at-lowest" | "too-cold-at-highest">,
  side: "warm" | "cold",
  kitchen: Names,
  writing: Writing,
): string => {
  const size = `${difference(writing, by)} too ${side}`;
  if (!canBeSet(kitchen, setUp))
    return `it is ${size}${inWhich(kitchen, setUp)} and has no other setting`;
  const nearest = withinTheAppliance(kitchen, setUp, writing);
  return `even ${nearest}, it ${side === "warm" ? "is" : "stays"} ${size}`;
};

const hoursText = (hours: number, { space }: Writing): string => duration(hours * 60, space);

const clauses: Clauses = {
  "too-warm-at-lowest": (obstacle, ...names) => tooFar(obstacle, "warm", ...names),
  "too-cold-at-highest": (obstacle, ...names) => tooFar(obstacle, "cold", ...names),
  "settings-too-coarse": ({ below, above }, _, writing) =>
    `it comes to ${temperature(writing, below.mean)} ${atSetting(below.setUp.setting, writing) ?? ""}, ` +
    `and ${atSetting(above.setUp.setting, writing) ?? ""}, the next, already to ${temperature(writing, above.mean)}`,
  "swings-too-wide": ({ peakToPeak, windowWidth }, _, writing) =>
    `it swings by ${difference(writing, peakToPeak)}, and the window is ${difference(writing, windowWidth)} wide`,
  "band-too-wide": ({ bandWidth, windowWidth }, _, writing) =>
    `it wanders over ${difference(writing, bandWidth)}, and the window is ${difference(writing, windowWidth)} wide`,
  drifts: ({ perHour: rate }, _, writing) =>
    `it drifts ${rate < 0 ? "down" : "up"} by ${perHour(writing, Math.abs(rate)).replaceAll("+", "")}`,
  "passes-ceiling": ({ ceiling, risk }, _, writing) =>
    `it is ${percent(risk, writing.space)} likely to go above ${askedTemperature(writing, ceiling)}, where this culture must never be`,
  "fell-away": ({ afterHours, needed }, _, writing) =>
    `its heat ended after ${hoursText(afterHours, writing)} of hold, and this culture needs ${hoursText(needed, writing)}`,
  "not-tested": () => "it has not been tested",
  "only-failed-tests": ({ tests }) =>
    tests === 1
      ? "its only test did not settle or could not be read"
      : `none of its ${tests} tests settled or could be read`,
  "stands-alone": ({ alone }, _, { space }) =>
    `its own test alone would make it ${percent(alone, space)}, but its other tests, or the room that it follows, speak against that`,
  "tests-disagree": ({ setUp, spread }, kitchen, writing) =>
    `its tests ${withinTheAppliance(kitchen, setUp, writing)}, lie ${difference(writing, spread)} apart, further than runs usually do`,
};

/** "it is 1.8 °C (3.2 °F) too warm and has no other setting": to stand after a colon, without a full stop. */
export const obstacleText = (obstacle: Obstacle, kitchen: Names, writing: Writing): string => {
  const clause = clauses[obstacle.code] as (
    obstacle: Obstacle,
    kitchen: Names,
    writing: Writing,
  ) => string;
  return clause(obstacle, kitchen, writing);
};
