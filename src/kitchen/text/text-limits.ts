/**
 * What is refused before the YAML parser sees it: texts so large or so deeply
 * nested that parsing them would overrun the call stack, and characters that
 * have no place in a text file. The parser works by recursion; its depth grows
 * with indentation, with keys and dashes on one line, and with open brackets.
 */
import { Lexer } from "yaml";

export interface TextFault {
  readonly line: number;
  readonly expected: string;
  readonly found: string;
}

const longestText = 5_000_000;
const deepestColumn = 100;
const nestedOnLine = 100;
const openBrackets = 50;

/** Characters no editor puts into a text, and lone carriage returns. */
// eslint-disable-next-line no-control-regex
const strange = /[\u0000-\u0008\u000B\u000C\u000E-\u001F\u007F\uFEFF\u2028\u2029\u0085]|\r(?!\n)/;

const lineRules: readonly (readonly [(line: string) => boolean, string, string])[] = [
  [(line) => strange.test(line), "text", "a control character"],
  [(line) => line.startsWith("%"), "the kitchen's sections", "a line that begins with %"],
  [(line) => /^\.\.\.(?:\s|$)/.test(line), "the kitchen's sections", 'a line "..."'],
  [
    (line) => line.search(/[^ \t]/) > deepestColumn,
    `at most ${deepestColumn} spaces before a line`,
    "more of them",
  ],
  // A run of these is what the parser's first pass goes down into.
  [(line) => /^\s*(?:[-?:]\s+){20}/.test(line), "entries in few layers", "many on one line"],
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

const indicators: ReadonlySet<string> = new Set(["-", "?", ":"]);

/** The line on which brackets, or keys outside of them, stand too deep in each other; 0 where none do. */
const tooDeepLine = (text: string): number => {
  let [line, brackets, keys] = [1, 0, 0];
  for (const token of new Lexer().lex(text)) {
    brackets = Math.max(0, brackets + (depthOf.get(token) ?? 0));
    if (brackets === 0 && indicators.has(token)) keys += 1;
    if (brackets > openBrackets || keys > nestedOnLine) return line;
    if (!token.includes("\n")) continue;
    line += token.split("\n").length - 1;
    keys = 0;
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
  return line === 0
    ? null
    : { line, expected: "entries in few layers", found: "many in each other" };
};
