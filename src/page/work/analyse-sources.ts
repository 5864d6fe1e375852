/** Files of one night to its analysis; a read that breaks off is the file's problem. */
import { analyse } from "../../analysis.ts";
import type { Analysis, AnalysisRequest } from "../../analysis.ts";
import { done } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import type { ChosenFile } from "../protocol.ts";
import { openBlob } from "./blob-source.ts";
import type { BlobSource } from "./blob-source.ts";
import { shownNames } from "./chosen-names.ts";
import type { Workroom } from "./workroom.ts";

const openAll = async (
  files: readonly ChosenFile[],
  onBytes: (count: number) => void,
): Promise<Outcome<readonly BlobSource[]>> => {
  const names = shownNames(files);
  const opened: BlobSource[] = [];
  for (const [at, { content, name }] of files.entries()) {
    // oxlint-disable-next-line no-await-in-loop -- each is hashed whole: two at once would double the memory
    const one = await openBlob(content, names[at] ?? name, onBytes);
    if (!one.ok) return one;
    opened.push(one.value);
  }
  return done(opened);
};

export const analyseFiles = async (
  request: AnalysisRequest,
  files: readonly ChosenFile[],
  { progress }: Pick<Workroom, "progress">,
): Promise<Outcome<Analysis>> => {
  const total = files.reduce((sum, { content }) => sum + content.size, 0);
  let read = 0;
  const sources = await openAll(files, (count) => {
    read += count;
    progress(read, total);
  });
  if (!sources.ok) return sources;
  try {
    return await analyse(request, sources.value);
  } catch (error) {
    const problem = sources.value.map(({ broken }) => broken()).find((found) => found !== null);
    if (problem === undefined) throw error;
    return { ok: false, problem };
  }
};
