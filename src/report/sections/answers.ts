/** The answers first. A single one stands alone; several get a lead, then a card each. */
import type { Analysis, ProbeAnalysis } from "../../analysis.ts";
import type { Verdict } from "../../culture/verdict-types.ts";
import { markup } from "../markup.ts";
import type { Markup } from "../markup.ts";
import { answerText, quotedProbeName } from "../wording/answers.ts";
import { roleNames } from "../wording/names.ts";
import { probeContext } from "../wording/reasons.ts";
import type { Writing } from "../writing.ts";
import { answerCard, framedAnswer } from "./answer-card.ts";
import { judgedProbes, leadBlock, probeTitle } from "./lead.ts";

interface Answer {
  readonly verdict: Verdict;
  readonly probe: ProbeAnalysis;
  readonly analysis: Analysis;
  readonly writing: Writing;
}

/** In full: it is the report's first sentence. */
const onlyAnswer = (answer: Answer): Markup => {
  const { verdict, probe, analysis, writing } = answer;
  const { role } = probe.series;
  const name = quotedProbeName(probe.series, probe.file, analysis.files.length > 1);
  return framedAnswer(
    verdict,
    probeContext(probe, analysis, writing),
    markup`<h2>${answerText(verdict, role, writing)}</h2>
<p class="where small">Probe ${name}, ${roleNames[role]}</p>`,
  );
};

const cardsOf = (probe: ProbeAnalysis, analysis: Analysis, writing: Writing): Markup => markup`
<h3>${probeTitle(probe, analysis)}, ${roleNames[probe.series.role]}</h3>
<div class="cards">${probe.verdicts.map((verdict) => answerCard(verdict, probeContext(probe, analysis, writing)))}
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
