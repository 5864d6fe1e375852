/** The answers first: one block for each probe and requirement. */
import type { Analysis, ProbeAnalysis } from "../../analysis.ts";
import type { Verdict } from "../../culture/verdict-types.ts";
import { markup } from "../markup.ts";
import type { Markup } from "../markup.ts";
import { answerText, quotedProbeName } from "../wording/answers.ts";
import { roleNames, verdictNames } from "../wording/names.ts";
import { nextStep } from "../wording/next-steps.ts";
import { probabilityText } from "../wording/probability.ts";
import { reasonText } from "../wording/reasons.ts";
import type { Writing } from "../writing.ts";

const reasons = (
  verdict: Verdict,
  probe: ProbeAnalysis,
  analysis: Analysis,
  writing: Writing,
): Markup | null =>
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

const answer = (
  verdict: Verdict,
  probe: ProbeAnalysis,
  analysis: Analysis,
  writing: Writing,
): Markup => {
  const several = analysis.files.length > 1;
  const chance = probabilityText(verdict.probability, analysis.confidence, writing.space);
  return markup`
<section class="answer ${verdict.verdict}">
<p class="verdict"><span class="mark">${verdictNames[verdict.verdict]}</span> <span class="chance">${chance} likely to hold</span></p>
<h2>${answerText(verdict, probe.series.role, writing)}</h2>
<p class="where small">Probe ${quotedProbeName(probe.series, probe.file, several)}, ${roleNames[probe.series.role]}</p>
${reasons(verdict, probe, analysis, writing)}
<p class="do"><strong>What to do</strong> ${nextStep(verdict)}</p>
</section>`;
};

const nothingAsked = markup`<p>No verdict was asked for, or no probe stood in the food’s place. The figures follow.</p>`;

export const answersSection = (analysis: Analysis, writing: Writing): Markup => {
  const blocks = analysis.probes.flatMap((probe) =>
    probe.verdicts.map((verdict) => answer(verdict, probe, analysis, writing)),
  );
  return markup`${blocks.length === 0 ? nothingAsked : blocks}`;
};
