/** kitchen.yaml in memory, kept after each edit, in step with other windows of the page. */
import type { Outcome } from "../../problem.ts";
import type { Keeper } from "./keeper.ts";

export interface HeldText {
  readonly text: string;
  /** The text as it was last seen to be kept; null where none was. */
  readonly kept: string | null;
  /** Why the text is not kept as it is; null where it is, or nothing of it needs to be. */
  readonly why: string | null;
}

const changedElsewhere =
  "another window of this page changed the kitchen while something here was not kept";

/** Whether another window's text takes the place of ours: nothing of ours would be lost. */
const givesWay = (
  { text, kept: before }: HeldText,
  kept: string | null,
  fresh: string,
): kept is string => kept !== null && kept !== before && text === (before ?? fresh);

interface Attempt {
  /** What was kept at that moment. */
  readonly kept: string | null;
  readonly from: string;
  readonly outcome: Outcome<string>;
  /** Whether what is kept may be written over: never another window's text by an older one. */
  readonly mayKeep: boolean;
}

type Edit = (text: string) => Outcome<string>;

const attemptOf = (held: HeldText, kept: string | null, edit: Edit, fresh: string): Attempt => {
  const gives = givesWay(held, kept, fresh);
  const from = gives ? kept : held.text;
  const mayKeep = gives || kept === null || kept === held.kept;
  return { kept, from, outcome: edit(from), mayKeep };
};

const heldAfter = (
  held: HeldText,
  { outcome, mayKeep, kept, from }: Attempt,
  why: string | null,
): HeldText => {
  if (!outcome.ok) return from === held.text ? held : { text: from, kept, why: null };
  const text = outcome.value;
  const seen = mayKeep ? kept : held.kept;
  if (why !== null) return { text, kept: seen, why };
  return mayKeep ? { text, kept: text, why: null } : { text, kept: seen, why: changedElsewhere };
};

export interface EditedText {
  readonly held: HeldText;
  readonly outcome: Outcome<string>;
  /** What was kept at that moment; null where nothing was. */
  readonly found: string | null;
}

/**
 * Makes an edit on the newest text and keeps the result. Where keeping fails
 * the edit stands in memory, with the reason; where the edit fails nothing is
 * changed. `edit` may run more than once. `fresh`: the text before any edit.
 */
export const editHeld = async (
  held: HeldText,
  edit: Edit,
  keeper: Pick<Keeper, "saveText">,
  fresh: string,
): Promise<EditedText> => {
  const attempts: Attempt[] = [];
  const saved = await keeper.saveText((kept) => {
    const attempt = attemptOf(held, kept, edit, fresh);
    attempts.push(attempt);
    return attempt.outcome.ok && attempt.mayKeep ? attempt.outcome.value : null;
  });
  const attempt = attempts.at(-1) ?? attemptOf(held, held.kept, edit, fresh);
  const why = saved.ok ? null : saved.why;
  const { outcome, kept: found } = attempt;
  return { held: heldAfter(held, attempt, why), outcome, found };
};
