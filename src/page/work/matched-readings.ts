/** Opened files held against what a kitchen lists: known by their bytes, never by their names alone. */
import type { Kitchen, TestFile } from "../../kitchen/kitchen.ts";
import { failed } from "../../problem.ts";
import type { Problem } from "../../problem.ts";
import type { ChosenFile } from "../protocol.ts";
import { baseName } from "./chosen-names.ts";
import { bytesHash, bytesOf } from "./file-hash.ts";
import type { RawFile } from "./keeper.ts";

export interface MatchedReadings {
  /** Listed and opened, by SHA-256, each with a copy of its own. */
  readonly found: ReadonlyMap<string, RawFile>;
  /** A listed name with other bytes, or a file that could not be read. */
  readonly problems: readonly Problem[];
  /** Names of files that the kitchen lists nowhere. */
  readonly others: readonly string[];
}

const shownDigits = 12;

const sameName = (listed: TestFile, name: string): boolean =>
  baseName(listed.path).toLowerCase() === baseName(name).toLowerCase();

const changed = ({ path, sha256 }: TestFile, found: string): Problem =>
  failed("raw-file-changed", {
    file: path,
    expected: sha256.slice(0, shownDigits),
    found: found.slice(0, shownDigits),
  }).problem;

interface Hashed {
  readonly name: string;
  readonly sha256: string;
}

/** `onRead`: told of bytes as files are gone through. */
export const matchedReadings = async (
  { tests }: Pick<Kitchen, "tests">,
  files: readonly ChosenFile[],
  onRead: (bytes: number) => void,
): Promise<MatchedReadings> => {
  const listed = tests.flatMap((test) => test.files);
  const bySha = new Map(listed.map((file) => [file.sha256, file]));
  const found = new Map<string, RawFile>();
  const problems: Problem[] = [];
  const strangers: Hashed[] = [];
  for (const { name, content } of files) {
    // oxlint-disable-next-line no-await-in-loop -- one file in memory at a time
    const bytes = await bytesOf(content, name);
    // oxlint-disable-next-line no-await-in-loop
    const hash = bytes.ok ? await bytesHash(bytes.value, name) : bytes;
    onRead(content.size);
    if (!bytes.ok || !hash.ok) {
      if (!hash.ok) problems.push(hash.problem);
      continue;
    }
    const wanted = bySha.get(hash.value);
    if (wanted === undefined) strangers.push({ name, sha256: hash.value });
    else found.set(hash.value, { path: wanted.path, content: new Blob([bytes.value]) });
  }
  const missing = listed.filter(({ sha256 }) => !found.has(sha256));
  const others: string[] = [];
  for (const { name, sha256 } of strangers) {
    const meant = missing.find((one) => sameName(one, name));
    if (meant === undefined) others.push(name);
    else problems.push(changed(meant, sha256));
  }
  return { found, problems, others };
};
