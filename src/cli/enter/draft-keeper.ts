/** Keeps a session's readings on disk while they are typed. */
import { done } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import type { TypedLog } from "../../readings/typed/typed-types.ts";
import type { Draft } from "./draft.ts";
import { newDraftFile, removeDraft, saveDraft } from "./draft-files.ts";
import type { DraftFile } from "./draft-files.ts";

/** What is to be typed, and where it is kept meanwhile. */
export interface Typing {
  readonly folder: string;
  readonly draft: Draft;
  readonly file: DraftFile;
}

export interface DraftKeeper {
  readonly save: (log: TypedLog) => Promise<Outcome<void>>;
  /** For when the test is stored. */
  readonly forget: () => Promise<void>;
  /** Path of the draft; null where nothing was written. */
  readonly path: () => string | null;
}

/** A new test: nothing is written before the first reading. */
export const newTyping = async (
  folder: string,
  test: Draft["test"],
  log: TypedLog,
): Promise<Typing> => {
  const words = [test.name ?? `${test.appliance} ${test.setting ?? ""}`, test.container];
  return { folder, draft: { test, log }, file: await newDraftFile(folder, words) };
};

/** Where another session has written the same draft, this one goes on in a new one, said by `warn`. */
export const draftKeeper = (
  { folder, draft, file }: Typing,
  warn: (text: string) => void,
): DraftKeeper => {
  let current = file;
  const save = async (log: TypedLog): Promise<Outcome<void>> => {
    const saved = await saveDraft(current, { test: draft.test, log });
    if (!saved.ok && saved.problem.code === "file-changed-meanwhile") {
      warn("Another session goes on with these readings; what you type is kept apart from it.");
      current = (await newTyping(folder, draft.test, log)).file;
      return save(log);
    }
    if (!saved.ok) return saved;
    current = saved.value;
    return done(undefined);
  };
  return {
    save,
    forget: () => removeDraft(current),
    path: () => (current.text === null ? null : current.path),
  };
};
