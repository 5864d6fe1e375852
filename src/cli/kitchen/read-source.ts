/** The readings of a test that is being entered: from a logger's file, or from text typed by hand. */
import { createHash } from "node:crypto";
import { basename } from "node:path";
import type { HashedSource } from "../../analysis-types.ts";
import { openLoggerFile } from "../../folder/logger-file.ts";
import { done } from "../../problem.ts";
import type { Outcome, Problem } from "../../problem.ts";
import { readReadings } from "../../readings/read-readings.ts";
import type { ReadingsFile } from "../../readings/readings-file.ts";
import type { NewTestFile } from "./new-test.ts";

export interface OpenedSource extends HashedSource {
  readonly bytes: number;
  readonly broken: () => Problem | null;
}

const typedSource = (name: string, text: string): OpenedSource => {
  const bytes = Buffer.from(text, "utf8");
  const chunks = async function* (): AsyncGenerator<Uint8Array> {
    yield bytes;
  };
  return {
    name,
    bytes: bytes.length,
    chunks: chunks(),
    sha256: () => createHash("sha256").update(bytes).digest("hex"),
    broken: () => null,
  };
};

export const sourceName = ({ source }: NewTestFile): string =>
  "path" in source ? basename(source.path) : source.fileName;

export const openSource = async (
  file: NewTestFile,
  onBytes: (count: number) => void,
): Promise<Outcome<OpenedSource>> =>
  "path" in file.source
    ? openLoggerFile(file.source.path, onBytes)
    : done(typedSource(file.source.fileName, file.source.text));

export interface ReadSource {
  readonly readings: ReadingsFile;
  readonly sha256: string;
}

/** Reads the whole file once: what it holds and its hash. A read that breaks off is the file's problem. */
export const readSource = async (
  file: NewTestFile,
  onBytes: (count: number) => void,
  onOpened: (bytes: number) => void,
): Promise<Outcome<ReadSource>> => {
  const opened = await openSource(file, onBytes);
  if (!opened.ok) return opened;
  onOpened(opened.value.bytes);
  try {
    const readings = await readReadings(opened.value, file.readingOptions);
    if (!readings.ok) return readings;
    return done({ readings: readings.value, sha256: opened.value.sha256() });
  } catch (error) {
    const problem = opened.value.broken();
    if (problem === null) throw error;
    return { ok: false, problem };
  }
};
