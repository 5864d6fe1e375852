/** Unfinished readings: whether to go on with them. */
import { basename } from "node:path";
import { done, failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import type { chooseOne, Choice } from "../kitchen/ask.ts";
import type { Draft } from "./draft.ts";
import type { DraftFile, FoundDraft } from "./draft-files.ts";
import { sinceText } from "./enter-text.ts";

export interface ChosenDraft {
  readonly file: DraftFile;
  readonly draft: Draft;
}

const begin = "begin";

const labelOf = ({ test, log }: Draft): string => {
  const setUp = [test.appliance, test.setting, test.container].filter((part) => part !== null);
  return `Go on with ${test.name ?? setUp.join(", ")}: ${sinceText(log)}`;
};

/**
 * Asks which of the unfinished tests to go on with; null: a new one, which
 * is so without a question where there are none. Fails with "stopped".
 */
export const chooseDraft = async (
  found: readonly FoundDraft[],
  choose: typeof chooseOne,
): Promise<Outcome<ChosenDraft | null>> => {
  const whole = found.flatMap(({ file, draft }) => (draft === null ? [] : [{ file, draft }]));
  if (whole.length === 0) return done(null);
  const choices: readonly Choice[] = [
    ...whole.map(({ draft }, at) => ({ value: String(at), label: labelOf(draft) })),
    { value: begin, label: "Begin a new test", hint: "the others stay" },
  ];
  const chosen = await choose("There are readings that were not finished.", choices);
  if (chosen === null) return failed("stopped", { what: "every question" });
  return done(chosen === begin ? null : (whole[Number(chosen)] ?? null));
};

/** Drafts that cannot be read are left alone and named. */
export const damagedDrafts = (found: readonly FoundDraft[]): readonly string[] =>
  found.filter(({ draft }) => draft === null).map(({ file }) => basename(file.path));
