import type { Problem } from "../../src/problem.ts";
import { problemText } from "../../src/problem.ts";
import { readReadings } from "../../src/readings/read-readings.ts";
import type { ByteSource, ReadingOptions, ReadingsFile } from "../../src/readings/readings-file.ts";

export type TextEncoding =
  "utf-8" | "utf-8-bom" | "utf-16le" | "utf-16be" | "utf-16le-bare" | "windows-1252";

const utf16 = (text: string, little: boolean): Uint8Array => {
  const bytes = new Uint8Array(text.length * 2);
  const view = new DataView(bytes.buffer);
  for (let at = 0; at < text.length; at += 1) view.setUint16(2 * at, text.charCodeAt(at), little);
  return bytes;
};

/** Text as bytes; windows-1252 only for the characters it shares with Latin-1. */
export const encode = (text: string, encoding: TextEncoding): Uint8Array => {
  if (encoding === "utf-8") return new TextEncoder().encode(text);
  if (encoding === "utf-8-bom") return new TextEncoder().encode(`\uFEFF${text}`);
  if (encoding === "windows-1252") return Uint8Array.from(text, (sign) => sign.charCodeAt(0));
  if (encoding === "utf-16le-bare") return utf16(text, true);
  return utf16(`\uFEFF${text}`, encoding === "utf-16le");
};

export const sourceOf = (bytes: Uint8Array, chunk = 65_536, name = "night.csv"): ByteSource => ({
  name,
  chunks: (async function* () {
    for (let at = 0; at < bytes.length; at += chunk) yield bytes.subarray(at, at + chunk);
  })(),
});

export const outcomeOf = (
  text: string | Uint8Array,
  options: ReadingOptions = {},
  chunk?: number,
) =>
  readReadings(sourceOf(typeof text === "string" ? encode(text, "utf-8") : text, chunk), options);

/** The file as read; a problem fails the test with its sentence. */
export const read = async (
  text: string | Uint8Array,
  options: ReadingOptions = {},
  chunk?: number,
): Promise<ReadingsFile> => {
  const outcome = await outcomeOf(text, options, chunk);
  if (!outcome.ok) throw new Error(`${outcome.problem.code}: ${problemText(outcome.problem)}`);
  return outcome.value;
};

export const problemOf = async (
  text: string | Uint8Array,
  options: ReadingOptions = {},
): Promise<Problem> => {
  const outcome = await outcomeOf(text, options);
  if (outcome.ok) throw new Error("expected a problem, found readings");
  return outcome.problem;
};

export const setAsideTotal = (file: ReadingsFile): number =>
  file.setAside.reduce((sum, { count }) => sum + count, 0);

export const rounded = (values: Float64Array, digits = 4): number[] =>
  Array.from(values, (value) => Number(value.toFixed(digits)));
