/** Where drafts lie: hidden files in the kitchen's readings/, one for each test that is being typed. */
import { readFile, readdir, rm } from "node:fs/promises";
import { join } from "node:path";
import { writeAtomically } from "../../folder/write-atomically.ts";
import { done, failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import { slug } from "../../input/water-test/test-id.ts";
import { draftText, readDraft } from "./draft.ts";
import type { Draft } from "./draft.ts";

export const draftFolder = (kitchenFolder: string): string => join(kitchenFolder, "readings");

const isDraftName = (name: string): boolean => /^\.draft-.*\.json$/u.test(name);

const textAt = (path: string): Promise<string | null> => readFile(path, "utf8").catch(() => null);

/** A draft on disk; `text` is what it held when this session last read or wrote it, null: nothing yet. */
export interface DraftFile {
  readonly path: string;
  readonly text: string | null;
}

export interface FoundDraft {
  readonly file: DraftFile;
  /** null: a file of that name that cannot be read as a draft. */
  readonly draft: Draft | null;
}

/** All drafts of a folder, by name; none where there is no such folder. */
export const findDrafts = async (folder: string): Promise<readonly FoundDraft[]> => {
  const names = (await readdir(folder).catch(() => [])).filter(isDraftName).toSorted();
  return Promise.all(
    names.map(async (name) => {
      const path = join(folder, name);
      const text = await textAt(path);
      return { file: { path, text }, draft: text === null ? null : readDraft(text) };
    }),
  );
};

/** A name no draft has; nothing is written yet. */
export const newDraftFile = async (
  folder: string,
  words: readonly string[],
): Promise<DraftFile> => {
  const plain = slug(words.join("-")) || "test";
  const taken = new Set(await readdir(folder).catch(() => []));
  let name = `.draft-${plain}.json`;
  for (let run = 2; taken.has(name); run += 1) name = `.draft-${plain}-${run}.json`;
  return { path: join(folder, name), text: null };
};

/**
 * Writes the draft whole. Fails, and changes nothing, where the file is not
 * what this session left there: another session goes on with it.
 */
export const saveDraft = async (file: DraftFile, draft: Draft): Promise<Outcome<DraftFile>> => {
  const text = draftText(draft);
  const saved = await writeAtomically(file.path, text, {
    lastCheck: async () =>
      (await textAt(file.path)) === file.text
        ? done(undefined)
        : failed("file-changed-meanwhile", { file: file.path }),
  });
  return saved.ok ? done({ path: file.path, text }) : saved;
};

/** Takes a draft away, unless another session has written it since. */
export const removeDraft = async ({ path, text }: DraftFile): Promise<void> => {
  if (text !== null && (await textAt(path)) === text) await rm(path, { force: true });
};
