/**
 * A kitchen's analysis as one HTML file, made like that of a single check: no
 * script, no network. The answers first, then what they rest on.
 */
import type { KitchenAnalysis } from "../kitchen-analysis-types.ts";
import { htmlPage, htmlParts, shownDate } from "./html-page.ts";
import type { HtmlOptions, HtmlParts } from "./html-page.ts";
import { appliancesOf, counted, readTests, unreadTests } from "./kitchen-page.ts";
import type { KitchenPage } from "./kitchen-page.ts";
import { markup } from "./markup.ts";
import type { Markup } from "./markup.ts";
import { cautionsSection } from "./sections/cautions.ts";
import { kitchenAdvice } from "./sections/kitchen-advice.ts";
import { kitchenAnswers } from "./sections/kitchen-answers.ts";
import { kitchenContainers } from "./sections/kitchen-containers.ts";
import { kitchenContents } from "./sections/kitchen-contents.ts";
import { kitchenData } from "./sections/kitchen-data.ts";
import { kitchenDoubt } from "./sections/kitchen-doubt.ts";
import { kitchenLead, unreadNote } from "./sections/kitchen-lead.ts";
import { kitchenMatrix } from "./sections/kitchen-matrix.ts";
import { kitchenMethod } from "./sections/kitchen-method.ts";
import { kitchenNext } from "./sections/kitchen-next.ts";
import { kitchenProvenance } from "./sections/kitchen-provenance.ts";
import { kitchenRecheck, recheckHeading } from "./sections/kitchen-recheck.ts";
import { kitchenRepeats } from "./sections/kitchen-repeats.ts";
import { kitchenResponse } from "./sections/kitchen-response.ts";
import { kitchenTest } from "./sections/kitchen-test.ts";
import { kitchenThermometers } from "./sections/kitchen-thermometers.ts";
import { calendarDay } from "./time-text.ts";
import { wholeDates } from "./whole-dates.ts";
import { markupWriting } from "./writing.ts";

const daysText = ({ tests }: KitchenAnalysis): string => {
  const days = tests
    .map(({ startedAt }) => calendarDay(startedAt))
    .filter((day) => day !== null)
    .toSorted();
  const [first] = days;
  const last = days.at(-1);
  if (first === undefined || last === undefined) return "";
  return first === last ? ` of ${first}` : ` from ${first} to ${last}`;
};

/** "7 water tests from ... to ..., and 1 more that could not be read". */
const testsText = (analysis: KitchenAnalysis): string => {
  const { tests } = analysis;
  const unread = unreadTests(analysis).length;
  if (tests.length === 0) return "no water test yet";
  if (unread === tests.length)
    return `${counted(unread, "water test")}, none of which could be read`;
  const more = unread === 0 ? "" : `, and ${unread} more that could not be read`;
  return `${counted(tests.length - unread, "water test")}${daysText(analysis)}${more}`;
};

/** "The whole kitchen: 4 appliances; 7 water tests from ... to ...; 3 cultures." */
const byline = (analysis: KitchenAnalysis, { renderedOn }: HtmlOptions): Markup => {
  const { kitchen, requirements, version } = analysis;
  const appliances = appliancesOf(analysis);
  const what =
    analysis.appliance === null
      ? `The whole kitchen: ${counted(appliances.length, "appliance")}`
      : `Only ${appliances.map(({ name }) => name).join(", ")}, of ${counted(kitchen.appliances.length, "appliance")} in the kitchen`;
  const rest = `${testsText(analysis)}; ${counted(requirements.length, "culture")}`;
  return markup`<p class="byline small">${wholeDates(`${what}; ${rest}. Report made ${shownDate(renderedOn)} by holdband ${version}.`)}</p>`;
};

/** Parts between the first answers and the tests, in the page's order. */
const earlierParts = async (page: KitchenPage) => [
  { id: "matrix", name: "Every tested set-up", content: kitchenMatrix(page) },
  { id: "advice", name: "What to change, and what that should do", content: kitchenAdvice(page) },
  { id: "response", name: "What each setting should give", content: await kitchenResponse(page) },
  { id: "why", name: "Why, and what to do", content: kitchenAnswers(page) },
];

/** Parts after the tests, in the page's order. */
const laterParts = async (page: KitchenPage) => [
  { id: "containers", name: "Food and its bath", content: kitchenContainers(page) },
  { id: "thermometers", name: "Thermometers", content: kitchenThermometers(page) },
  { id: "repeats", name: "One run and the next", content: kitchenRepeats(page) },
  { id: "doubt", name: "Where the doubt comes from", content: kitchenDoubt(page) },
  { id: "data", name: "The readings", content: kitchenData(page) },
  { id: "recheck", name: recheckHeading, content: await kitchenRecheck(page) },
  { id: "next", name: "What to test next", content: kitchenNext(page) },
  { id: "cautions", name: "Before you culture", content: cautionsSection() },
  { id: "method", name: "How this was worked out", content: kitchenMethod(page) },
  { id: "provenance", name: "What this report was made from", content: kitchenProvenance(page) },
];

const mainPart = async (page: KitchenPage): Promise<Markup> => {
  const earlier = await earlierParts(page);
  const later = await laterParts(page);
  const tests = await Promise.all(readTests(page.analysis).map((test) => kitchenTest(page, test)));
  return markup`${kitchenLead(page)}
${unreadNote(page)}
${kitchenContents(page, earlier, later)}
${earlier.map(({ content }) => content)}
${tests}
${later.map(({ content }) => content)}`;
};

/** The report as markup without a document around it; `style` of style.ts is made for it. */
export const toKitchenHtmlParts = async (
  analysis: KitchenAnalysis,
  options: HtmlOptions,
): Promise<HtmlParts> => {
  const page = { analysis, writing: markupWriting(analysis.kitchen.shownUnit) };
  const appliances = appliancesOf(analysis);
  return htmlParts({
    title: `Water tests: ${appliances.map(({ name }) => name).join(", ") || "the kitchen"}`,
    heading: "Which set-up holds which culture",
    byline: byline(analysis, options),
    main: await mainPart(page),
  });
};

export const toKitchenHtml = async (
  analysis: KitchenAnalysis,
  options: HtmlOptions,
): Promise<string> => htmlPage(await toKitchenHtmlParts(analysis, options));
