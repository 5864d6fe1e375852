/** One appliance's rows at the head of a kitchen's report: what it holds, what to change, what is open. */
import type { Requirement } from "../../culture/verdict-types.ts";
import type { Appliance } from "../../kitchen/kitchen.ts";
import type { KitchenPage } from "../kitchen-page.ts";
import { adviceOf, isSettled, standingOf } from "../kitchen-standing.ts";
import type { Changed, Standing, Tested } from "../kitchen-standing.ts";
import { markup } from "../markup.ts";
import type { Markup } from "../markup.ts";
import { shortCultureName } from "../wording/cultures.ts";
import {
  againstIt,
  changeText,
  disagreementTexts,
  expectedText,
  movedText,
  whereTested,
} from "../wording/first-answers.ts";
import { openGist } from "../wording/gist.ts";
import { verdictNames } from "../wording/names.ts";
import { probabilityText } from "../wording/probability.ts";
import { adviceItemId } from "./kitchen-advice.ts";
import { separated } from "./verdict-clauses.ts";

/** With more cultures than this, those an appliance is not for are counted. */
const mostInWords = 4;

type Looks = "holds" | "holds predicted" | "unproven" | "misses";

const row = (looks: Looks, mark: string, said: Markup): Markup =>
  markup`<li class="${looks}"><span class="mark">${mark}</span> <span class="said">${said}</span></li>\n`;

const chance = ({ analysis, writing }: KitchenPage, probability: number): string =>
  `(${probabilityText(probability, analysis.confidence, writing.space)})`;

/** Where the advice has no more to say of it, links to the advice lead here. */
const heldRow = (
  page: KitchenPage,
  appliance: Appliance,
  standing: Standing,
  one: Tested,
): Markup => {
  const { analysis, writing } = page;
  const advice = adviceOf(analysis, appliance);
  const { culture } = one.requirement;
  const settled = advice?.cultures.some(
    (each) => each.culture === culture && isSettled(standing, each),
  );
  const id = settled === true ? adviceItemId(page, appliance.id, culture) : null;
  const name = shortCultureName(one.requirement);
  const where = whereTested(one, analysis, writing);
  const but = againstIt(one, advice, analysis, writing);
  return row(
    "holds",
    verdictNames.holds,
    markup`${id === null ? markup`<b>` : markup`<b id="${id}">`}${name}</b>: ${where} ${chance(page, one.verdict.probability)}${but === null ? "." : `; ${but}.`}`,
  );
};

const linkToAdvice = (page: KitchenPage, appliance: Appliance, one: Changed, text: string) =>
  markup`<a href="#${adviceItemId(page, appliance.id, one.requirement.culture)}">${text}</a>`;

const changeRow = (page: KitchenPage, appliance: Appliance, one: Changed): Markup => {
  const { analysis, writing } = page;
  const { answer, chance: likely } = one.advice;
  const name = linkToAdvice(page, appliance, one, shortCultureName(one.requirement));
  return row(
    answer === "can" ? "holds predicted" : "unproven",
    "Change",
    markup`${changeText(one, analysis, writing)} <b>${name}</b> ${chance(page, likely.probability)}${expectedText(one, writing)}.`,
  );
};

const openRow = (page: KitchenPage, one: Tested): Markup =>
  row(
    "unproven",
    verdictNames.unproven,
    markup`<b>${shortCultureName(one.requirement)}</b>: ${whereTested(one, page.analysis, page.writing)} ${chance(page, one.verdict.probability)}; ${openGist(one.verdict)}.`,
  );

const namesOf = (all: readonly Requirement[]): string => all.map(shortCultureName).join(", ");

const notText = (not: readonly Requirement[], all: number): string => {
  if (not.length === 0) return "";
  if (not.length <= mostInWords) return `Not for ${namesOf(not)}.`;
  return not.length === all ? `Not for any of the ${all}.` : `Not for the other ${not.length}.`;
};

/** Whatever has no row of its own, in one line. */
const rest = (page: KitchenPage, appliance: Appliance, standing: Standing): Markup | null => {
  const { possible, unknown, not } = standing;
  const names = possible.map(
    (one) =>
      markup`${linkToAdvice(page, appliance, one, shortCultureName(one.requirement))} ${chance(page, one.advice.chance.probability)}`,
  );
  const parts = [
    ...(names.length === 0 ? [] : [markup`Could be changed for ${separated(names, ", ")}.`]),
    ...(unknown.length === 0 ? [] : [markup`As tested not for ${namesOf(unknown)}.`]),
    ...(not.length === 0 ? [] : [markup`${notText(not, page.analysis.requirements.length)}`]),
  ];
  return parts.length === 0 ? null : markup`<li class="rest">${separated(parts, " ")}</li>\n`;
};

/** What a reader must know before trusting any of it. */
const warnings = ({ analysis, writing }: KitchenPage, appliance: Appliance): readonly Markup[] => [
  ...analysis.advice.recheck.rechecks
    .filter(({ word, setUp }) => word === "moved" && setUp.appliance === appliance.id)
    .map((one) =>
      row("misses", "Moved", markup`<a href="#recheck">${movedText(one, analysis, writing)}</a>.`),
    ),
  ...disagreementTexts(adviceOf(analysis, appliance), analysis, writing).map((text) =>
    row("misses", "Caution", markup`${text}`),
  ),
];

export const standingRows = (page: KitchenPage, appliance: Appliance): readonly Markup[] => {
  const standing = standingOf(page.analysis, appliance);
  return [
    ...warnings(page, appliance),
    ...standing.held.map((one) => heldRow(page, appliance, standing, one)),
    ...(standing.change === null ? [] : [changeRow(page, appliance, standing.change)]),
    ...standing.open.map((one) => openRow(page, one)),
    ...[rest(page, appliance, standing)].filter((one) => one !== null),
  ];
};
