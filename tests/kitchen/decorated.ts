/** Texts as people keep them: comments, empty lines, and line ends of either kind, in odd places. */
import fc from "fast-check";
import type { Kitchen } from "../../src/kitchen/kitchen.ts";
import { kitchenText } from "./written-kitchen.ts";

const comments = ["# note", "#", "# - a: {b", "#key: 'x", "# 日本 #"];

interface Decoration {
  /** For each line in turn: what stands before it. */
  readonly above: readonly (string | null)[];
  /** For each line in turn: whether it ends in a comment. */
  readonly behind: readonly boolean[];
  readonly lineEnd: string;
  readonly mark: string;
  readonly endsOpen: boolean;
}

const anyDecoration: fc.Arbitrary<Decoration> = fc.record({
  above: fc.array(
    fc.option(
      fc
        .tuple(fc.integer({ min: 0, max: 8 }), fc.constantFrom("", ...comments))
        .map(([spaces, text]) => (text === "" ? "" : " ".repeat(spaces) + text)),
      { freq: 2, nil: null },
    ),
    { minLength: 5, maxLength: 30 },
  ),
  behind: fc.array(fc.boolean(), { minLength: 3, maxLength: 20 }),
  lineEnd: fc.constantFrom("\n", "\r\n"),
  mark: fc.constantFrom("", "\uFEFF"),
  endsOpen: fc.boolean(),
});

const decorate = (text: string, how: Decoration): string => {
  const lines = text.trimEnd().split("\n");
  const all = lines.flatMap((line, index) => {
    const above = how.above[index % how.above.length] ?? null;
    const behind = how.behind[index % how.behind.length] === true ? "   # behind" : "";
    return (above === null ? [] : [above]).concat(`${line}${behind}`);
  });
  return how.mark + all.join(how.lineEnd) + (how.endsOpen ? "" : how.lineEnd);
};

/** A kitchen's text, decorated; it says the same as without. */
export const anyTextOf = (kitchen: Kitchen): fc.Arbitrary<string> =>
  anyDecoration.map((how) => decorate(kitchenText(kitchen), how));

/**
 * Lines with their ends taken off, for comparing; a mark at the start is no
 * part of a line, and neither are brackets with nothing in them, which give
 * way to what is put there.
 */
export const linesOf = (text: string): readonly string[] =>
  text
    .replace("\uFEFF", "")
    .split(/\r?\n/)
    .map((line) => line.replace(/: (?:\{\}|\[\])(?=$| )/, ":"));

/** Whether all lines stand in the text in their order, perhaps with others between them. */
export const keepsLines = (lines: readonly string[], text: string): boolean => {
  let next = 0;
  for (const line of linesOf(text)) if (line === lines[next]) next += 1;
  return next === lines.length;
};
