/**
 * What is refused before the YAML parser sees it: texts so large or so deeply
 * nested that parsing them would overrun the call stack, and characters that
 * have no place in a text file. The parser works by recursion; its depth grows
 * with indentation, with indicators on one line, and with open brackets.
 */
import { Lexer } from "yaml";

export interface TextFault {
  readonly line: number;
  readonly expected: string;
  readonly found: string;
}

const longestText = 5_000_000;
const deepestColumn = 100;
const indicatorsOnLine = 100;
const openBrackets = 50;

/** Characters no editor puts into a text, and lone carriage returns. */
// eslint-disable-next-line no-control-regex
const strange = /[\u0000-\u0008\u000B\u000C\u000E-\u001F\u007F\uFEFF\u2028\u2029\u0085]|\r(?!\n)/;

const lineRules: readonly (readonly [(line: string) => boolean, string, string])[] = [
  [(line) => strange.test(line), "text", "a control character"],
  [(line) => /^%/.test(line), "the kitchen's sections", "a line that begins with %"],
  [(line) => /^\.\.\.(?:\s|$)/.test(line), "the kitchen's sections", 'a line "..."'],
  [
    (line) => line.search(/[^ \t]/) > deepestColumn,
    `at most ${deepestColumn} spaces before a line`,
    "more of them",
  ],
  [
    (line) => (line.match(/[-?:][ \t\r]/g)?.length ?? 0) > indicatorsOnLine,
    `at most ${indicatorsOnLine} entries on one line`,
    "more of them",
  ],
];

const faultOfLine = (line: string, number: number): TextFault | null => {
  if (/^[ ]*#/.test(line) && !strange.test(line)) return null;
  const rule = lineRules.find(([breaks]) => breaks(line));
  return rule === undefined ? null : { line: number, expected: rule[1], found: rule[2] };
};

const depthOf: ReadonlyMap<string, number> = new Map([
  ["{", 1],
  ["[", 1],
  ["}", -1],
  ["]", -1],
]);

/** The line on which brackets stand open too deep, 0 where they do not. */
const tooDeepLine = (text: string): number => {
  let line = 1;
  let depth = 0;
  for (const token of new Lexer().lex(text)) {
    depth = Math.max(0, depth + (depthOf.get(token) ?? 0));
    if (depth > openBrackets) return line;
    if (token.includes("\n")) line += token.split("\n").length - 1;
  }
  return 0;
};

/** The first thing in the way of parsing; null where the parser may have the text. */
export const textFault = (text: string): TextFault | null => {
  if (text.length > longestText) {
    return { line: 1, expected: "at most 5 MB", found: `${text.length} characters` };
  }
  for (const [index, line] of text.split("\n").entries()) {
    const fault = faultOfLine(`${line}\n`, index + 1);
    if (fault !== null) return fault;
  }
  const line = tooDeepLine(text);
  return line === 0 ? null : { line, expected: "brackets in few layers", found: "too many open" };
};
