/** The answers first. A single one stands alone; several get a lead, then a card each. */
import type { Analysis, ProbeAnalysis } from "../../analysis.ts";
import type { Requirement, Verdict } from "../../culture/verdict-types.ts";
import { markup } from "../markup.ts";
import type { Markup } from "../markup.ts";
import { answerText, quotedProbeName } from "../wording/answers.ts";
import { cultureName, shortCultureName } from "../wording/cultures.ts";
import { roleNames, verdictNames } from "../wording/names.ts";
import { nextStep } from "../wording/next-steps.ts";
import { probabilityText } from "../wording/probability.ts";
import { reasonText } from "../wording/reasons.ts";
import type { Writing } from "../writing.ts";
import { judgedProbes, leadBlock, probeTitle } from "./lead.ts";

interface Answer {
  readonly verdict: Verdict;
  readonly probe: ProbeAnalysis;
  readonly analysis: Analysis;
  readonly writing: Writing;
}

const reasons = ({ verdict, probe, analysis, writing }: Answer): Markup | null =>
  verdict.reasons.length === 0
    ? null
    : markup`<ul>${verdict.reasons.map((reason) => {
        const text = reasonText(reason, {
          writing,
          role: probe.series.role,
          thermometerAccuracy: analysis.thermometer.accuracy,
          confidence: analysis.confidence,
        });
        return markup`<li>${text}</li>\n`;
      })}</ul>`;

const framed = (answer: Answer, heading: Markup): Markup => {
  const { verdict, analysis, writing } = answer;
  const chance = probabilityText(verdict.probability, analysis.confidence, writing.space);
  return markup`
<section class="answer ${verdict.verdict}">
<p class="verdict"><span class="mark">${verdictNames[verdict.verdict]}</span> <span class="chance">${chance} likely to hold</span></p>
${heading}
${reasons(answer)}
<p class="do"><strong>What to do</strong> ${nextStep(verdict)}</p>
</section>`;
};

/** In full: it is the report's first sentence. */
const onlyAnswer = (answer: Answer): Markup => {
  const { verdict, probe, analysis, writing } = answer;
  const { role } = probe.series;
  const name = quotedProbeName(probe.series, probe.file, analysis.files.length > 1);
  return framed(
    answer,
    markup`<h2>${answerText(verdict, role, writing)}</h2>
<p class="where small">Probe ${name}, ${roleNames[role]}</p>`,
  );
};

/** The name, and in a line of its own whatever stands in brackets: the organisms. */
const namedInFull = (requirement: Requirement): Markup => {
  const name = shortCultureName(requirement);
  const organisms = cultureName(requirement).slice(name.length).trim();
  return markup`${name}${organisms === "" ? null : markup` <span class="organisms">${organisms}</span>`}`;
};

/** Short: what was asked stands in the table above. */
const card = (answer: Answer): Markup =>
  framed(answer, markup`<h4>${namedInFull(answer.verdict.requirement)}</h4>`);

const cardsOf = (probe: ProbeAnalysis, analysis: Analysis, writing: Writing): Markup => markup`
<h3>${probeTitle(probe, analysis)}, ${roleNames[probe.series.role]}</h3>
<div class="cards">${probe.verdicts.map((verdict) => card({ verdict, probe, analysis, writing }))}
</div>`;

const nothingAsked = markup`<p>No verdict was asked for, or no probe stood in the food’s place. The figures follow.</p>`;

export const answersSection = (analysis: Analysis, writing: Writing): Markup => {
  const probes = judgedProbes(analysis);
  const [first] = probes;
  const [verdict] = first?.verdicts ?? [];
  if (first === undefined || verdict === undefined) return nothingAsked;
  if (probes.length === 1 && first.verdicts.length === 1) {
    return onlyAnswer({ verdict, probe: first, analysis, writing });
  }
  return markup`${leadBlock(analysis, writing)}
<section aria-labelledby="why">
<h2 id="why">Why, and what to do</h2>
${probes.map((probe) => cardsOf(probe, analysis, writing))}
</section>`;
};
