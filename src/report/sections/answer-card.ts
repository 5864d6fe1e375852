/** One verdict in a frame: mark and probability, what it is about, why, and what to do. */
import type { Requirement, Verdict } from "../../culture/verdict-types.ts";
import { markup } from "../markup.ts";
import type { Markup } from "../markup.ts";
import { cultureName, shortCultureName } from "../wording/cultures.ts";
import { verdictNames } from "../wording/names.ts";
import { nextStep } from "../wording/next-steps.ts";
import { reasonTexts } from "../wording/reasons.ts";
import type { ReasonContext } from "../wording/reasons.ts";
import { chance } from "./verdict-clauses.ts";

const reasons = (verdict: Verdict, context: ReasonContext): Markup | null =>
  verdict.reasons.length === 0
    ? null
    : markup`<ul>${reasonTexts(verdict.reasons, context).map((text) => markup`<li>${text}</li>\n`)}</ul>`;

export const framedAnswer = (
  verdict: Verdict,
  context: ReasonContext,
  heading: Markup,
  more: Markup | null = null,
): Markup => markup`
<section class="answer ${verdict.verdict}">
<p class="verdict"><span class="mark">${verdictNames[verdict.verdict]}</span> <span class="chance">${chance(verdict, context.confidence, context.writing)} likely to hold</span></p>
${heading}
${reasons(verdict, context)}
<p class="do"><strong>What to do</strong> ${nextStep(verdict, context)}${more}</p>
</section>`;

/** The name, and in a line of its own whatever stands in brackets: the organisms. */
const namedInFull = (requirement: Requirement): Markup => {
  const name = shortCultureName(requirement);
  const organisms = cultureName(requirement).slice(name.length).trim();
  return markup`${name}${organisms === "" ? null : markup` <span class="organisms">${organisms}</span>`}`;
};

/** Short: what was asked stands in the table above. `more` follows what to do. */
export const answerCard = (
  verdict: Verdict,
  context: ReasonContext,
  more: Markup | null = null,
): Markup =>
  framedAnswer(verdict, context, markup`<h4>${namedInFull(verdict.requirement)}</h4>`, more);
