/** A problem as the form shows it: at the field where the mistake is, in the command line's words. */
import { problemText } from "../../../problem.ts";
import type { Problem } from "../../../problem.ts";
import type { Field } from "./field-types.ts";

export interface ShownProblem {
  readonly text: string;
  /** Key of the field it stands at; null for the whole form. */
  readonly key: string | null;
}

const flag = /--([a-z]+(?:-[a-z]+)*)/gu;

/** "pressure-at" to "pressureAt". */
const keyOf = (name: string): string =>
  name.replaceAll(/-([a-z])/gu, (_, letter: string) => letter.toUpperCase());

/** The command line's flags by the names their fields have here. */
const withLabels = (text: string, labels: ReadonlyMap<string, string>): string =>
  text.replaceAll(flag, (whole, name: string) => {
    const label = labels.get(keyOf(name));
    return label === undefined ? whole : `“${label}”`;
  });

const windowCodes: ReadonlySet<string> = new Set(["window-inverted", "window-wrong-unit"]);

/** Fields of problems that name no flag. */
const keyByCode = (problem: Problem): string | null => {
  if (windowCodes.has(problem.code)) return "low";
  if (problem.code === "ceiling-below-window") return "ceiling";
  if (problem.code === "culture-unknown") return "culture";
  if (problem.code === "check-doubtful") return "confirm";
  return problem.code === "reading-unread" || problem.code === "reading-doubtful" ? "lines" : null;
};

/** What was said wrongly comes first; else the first flag that the words name. */
const named = (problem: Problem, text: string): readonly string[] => {
  const facts = problem.facts as Readonly<Record<string, unknown>>;
  const option = typeof facts["option"] === "string" ? facts["option"] : "";
  return [...`${option} ${text}`.matchAll(flag)].map(([, name = ""]) => keyOf(name));
};

/** `labels`: names of fields beside those of the form, by key. */
export const shownProblem = (
  problem: Problem,
  fields: readonly Field[],
  labels: Readonly<Record<string, string>> = {},
): ShownProblem => {
  const text = problemText(problem);
  const known = new Map([
    ...Object.entries(labels),
    ...fields.map(({ key, label }) => [key, label] as const),
  ]);
  const here = (key: string | null): boolean => key !== null && known.has(key);
  const byCode = keyByCode(problem);
  const key = here(byCode) ? byCode : (named(problem, text).find(here) ?? null);
  return { text: withLabels(text, known), key };
};
