/** Verdicts in running text: what a set-up holds, what is not proven, what it misses. */
import type { Verdict, VerdictWord } from "../../culture/verdict-types.ts";
import { markup } from "../markup.ts";
import type { Markup } from "../markup.ts";
import { shortCultureName } from "../wording/cultures.ts";
import { missGist, openGist } from "../wording/gist.ts";
import { probabilityText } from "../wording/probability.ts";
import type { Writing } from "../writing.ts";

export const chance = ({ probability }: Verdict, confidence: number, writing: Writing): string =>
  probabilityText(probability, confidence, writing.space);

/** "holds for", "1.8 °C (3.2 °F) too warm for", "not proven for": whatever a culture's name can follow. */
const opening = (verdict: Verdict, writing: Writing): string => {
  if (verdict.verdict === "holds") return "holds for";
  return verdict.verdict === "misses" ? `${missGist(verdict, writing)} for` : "not proven for";
};

const named = (verdict: Verdict, confidence: number, writing: Writing): Markup => {
  const settled = verdict.verdict === "unproven" ? `; ${openGist(verdict)}` : "";
  return markup`<b>${shortCultureName(verdict.requirement)}</b> (${chance(verdict, confidence, writing)}${settled})`;
};

export const separated = (parts: readonly Markup[], separator: string): readonly Markup[] =>
  parts.map((part, at) => (at === 0 ? part : markup`${separator}${part}`));

export interface Clause {
  readonly word: VerdictWord | undefined;
  readonly text: Markup;
}

/** What holds first; cultures of the same finding together. */
export const clauses = (
  verdicts: readonly Verdict[],
  confidence: number,
  writing: Writing,
): readonly Clause[] => {
  const order = ["holds", "unproven", "misses"];
  const found = new Map<string, Verdict[]>();
  for (const verdict of verdicts.toSorted(
    (a, b) => order.indexOf(a.verdict) - order.indexOf(b.verdict),
  )) {
    const key = opening(verdict, writing);
    found.set(key, [...(found.get(key) ?? []), verdict]);
  }
  return [...found].map(([key, alike]) => ({
    word: alike[0]?.verdict,
    text: markup`${key} ${separated(
      alike.map((verdict) => named(verdict, confidence, writing)),
      ", ",
    )}`,
  }));
};
