import { neutraliseQuotes, quoteStateAfter, tightenQuotes } from "./quoted-lines.ts";

/**
 * Cuts decoded text, as it comes in pieces, into blocks that hold whole
 * records: line ends become "\n" (quoted ones included), the last unfinished
 * line waits for the next piece, a quoted field that runs over several lines
 * stays whole. A quote that is never closed would swallow the rest of the
 * file; such a line's quotes are made plain text instead, so that this one row
 * is judged by itself and every later one is read.
 */
export interface RecordSplitter {
  /** The whole records so far, "" when there is none yet. */
  push(text: string): string;
  /** The last record, which may lack its line end. */
  end(): string;
}

/** A quoted field may run over this many lines; longer ones are taken for a stray quote. */
const longestField = 20;

const unifyLineEnds = (text: string): string =>
  text.includes("\r") ? text.replace(/\r\n?/gu, "\n") : text;

/** Index of the last line of the quoted field opened in `lines[at]`; -1 when none closes it; null when more text is needed. */
const closingLine = (
  lines: readonly string[],
  at: number,
  delimiter: string,
  complete: boolean,
): number | null => {
  for (let next = at + 1; next <= at + longestField; next += 1) {
    const line = lines[next];
    if (line === undefined) return complete ? -1 : null;
    const state = quoteStateAfter(line, delimiter, true);
    if (state === "broken") return -1;
    if (state === "closed") return next;
  }
  return -1;
};

/** Mends the quotes of whole lines; gives how many of them are settled. */
const mendLines = (lines: string[], delimiter: string, complete: boolean): number => {
  let at = 0;
  while (at < lines.length) {
    if (!(lines[at] ?? "").includes('"')) {
      at += 1;
      continue;
    }
    const line = tightenQuotes(lines[at] ?? "", delimiter);
    const state = quoteStateAfter(line, delimiter, false);
    const last = state === "open" ? closingLine(lines, at, delimiter, complete) : at;
    if (last === null) return at;
    lines[at] = state === "broken" || last === -1 ? neutraliseQuotes(line) : line;
    at = (last === -1 ? at : last) + 1;
  }
  return at;
};

/** A splitter for one delimiter; linear in the text. */
export const createRecordSplitter = (delimiter: string): RecordSplitter => {
  let rest = "";
  const settle = (whole: string, tail: string, complete: boolean): string => {
    rest = tail;
    if (!whole.includes('"')) return whole;
    const lines = whole.slice(0, -1).split("\n");
    const settled = mendLines(lines, delimiter, complete);
    if (settled < lines.length) rest = `${lines.slice(settled).join("\n")}\n${tail}`;
    return settled === 0 ? "" : `${lines.slice(0, settled).join("\n")}\n`;
  };
  return {
    push(text) {
      const joined = rest + text;
      // A "\r" at the very end may be the first half of a line end.
      const held = joined.endsWith("\r") ? "\r" : "";
      const unified = unifyLineEnds(held === "" ? joined : joined.slice(0, -1));
      const cut = unified.lastIndexOf("\n") + 1;
      return settle(unified.slice(0, cut), unified.slice(cut) + held, false);
    },
    end() {
      const unified = unifyLineEnds(rest);
      if (unified === "") return "";
      return settle(unified.endsWith("\n") ? unified : `${unified}\n`, "", true);
    },
  };
};
