/** Texts that carry their number and a checksum of themselves: a torn one cannot pass. */
import { createHash } from "node:crypto";

const sumOf = (text: string): string => createHash("sha256").update(text).digest("hex");

/** Lengths differ from number to number, from 1 to about 250 kB, so that a mixture would show. */
export const versionedText = (version: number, writer: string): string => {
  const lines = 1 + ((version * 7919) % 4001);
  const filler = Array.from({ length: lines }, (_, at) => `# ${version}.${at} ${"x".repeat(50)}`);
  const body = `version: ${version}\nwriter: ${writer}\n${filler.join("\n")}\n`;
  return `${body}sum: ${sumOf(body)}\n`;
};

/** The version of a whole text; null of anything else. */
export const versionOf = (text: string): number | null => {
  const at = text.lastIndexOf("sum: ");
  const version = /^version: (\d+)\n/.exec(text)?.[1];
  const whole = at > 0 && text.slice(at) === `sum: ${sumOf(text.slice(0, at))}\n`;
  return whole && version !== undefined ? Number(version) : null;
};
