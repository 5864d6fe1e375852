import { failed } from "../../problem.ts";

/** So much of what was typed is shown again. */
const mostShown = 40;

/** What was typed, fit to be shown: one line, no control characters, not too long. */
export const shownText = (typed: string): string => {
  const plain = typed.trim().replaceAll(/\p{C}/gu, "?").replaceAll(/\s+/gu, " ");
  return plain.length > mostShown ? `${plain.slice(0, mostShown)}...` : plain;
};

/** A line that cannot be read; `line` is null where it was typed at a prompt. */
export const unread = (line: number | null, expected: string, found: string, advice: string) =>
  failed("reading-unread", { line, expected, found: `"${shownText(found)}"`, advice });
