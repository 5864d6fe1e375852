/** A night's answer in one sentence, to be read out: the words of the report itself. */
import type { Analysis, ProbeAnalysis } from "../../analysis.ts";
import type { Verdict } from "../../culture/verdict-types.ts";
import { clauses } from "../../report/sections/verdict-clauses.ts";
import { answerText, probeName } from "../../report/wording/answers.ts";
import { roleNames } from "../../report/wording/names.ts";
import { probabilityText } from "../../report/wording/probability.ts";
import { plainWriting } from "../../report/writing.ts";
import type { Writing } from "../../report/writing.ts";
import { plainText } from "./plain-text.ts";

const clausesText = (verdicts: readonly Verdict[], confidence: number, writing: Writing): string =>
  clauses(verdicts, confidence, writing)
    .map(({ text }) => plainText(text.html))
    .join("; ");

const onlyAnswer = (
  probe: ProbeAnalysis,
  verdict: Verdict,
  confidence: number,
  writing: Writing,
): string => {
  const chance = probabilityText(verdict.probability, confidence, writing.space);
  return `${answerText(verdict, probe.series.role, writing)} It is ${chance} likely to hold.`;
};

export const nightSummary = ({ probes, files, confidence, shownUnit }: Analysis): string => {
  const writing = plainWriting(shownUnit);
  const judged = probes.filter(({ verdicts }) => verdicts.length > 0);
  const [probe] = judged;
  const [verdict] = probe?.verdicts ?? [];
  if (probe === undefined || verdict === undefined) {
    const names = probes.map(({ series }) => `${series.name}, ${roleNames[series.role]}`);
    return `No verdict: ${names.join("; ")}.`;
  }
  if (judged.length === 1 && probe.verdicts.length === 1) {
    return onlyAnswer(probe, verdict, confidence, writing);
  }
  const texts = judged.map(({ series, file, verdicts }) => {
    const name = probeName(series, file, files.length > 1);
    return `${name}: ${clausesText(verdicts, confidence, writing)}.`;
  });
  return texts.join(" ");
};
