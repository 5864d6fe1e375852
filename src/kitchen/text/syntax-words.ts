/** The YAML parser's complaints in the cook's words. */
import type { ErrorCode, YAMLError } from "yaml";

interface Words {
  readonly expected: string;
  readonly example: string;
  /** Said instead of the line itself. */
  readonly found?: string;
}

const quoted = 'name: "Cooker: the big one", in quotes';
const sameColumn: Words = {
  expected: "the lines of one group to begin in the same column",
  example: "two spaces before each of them",
};
const pairOnLine: Words = {
  expected: 'a key, a colon, a space and a value ("key: value")',
  example: "room: 17..24",
};
const closing: Words = {
  expected: "brackets that open and close, inside their own lines",
  example: "marks: [1, 2, 3]",
};

const byCode: { readonly [Code in ErrorCode]?: Words } = {
  TAB_AS_INDENT: {
    expected: "spaces before the line, two for each layer",
    found: "a tab",
    example: "",
  },
  BLOCK_AS_IMPLICIT_KEY: { expected: 'one "key: value" to a line', example: quoted },
  MULTILINE_IMPLICIT_KEY: pairOnLine,
  BAD_SCALAR_START: { expected: "a value in quotes, as it begins with a sign", example: quoted },
  BAD_DQ_ESCAPE: {
    expected: "no backslash in double quotes",
    example: "name: 'Box', in single quotes",
  },
  MULTIPLE_DOCS: { expected: "one kitchen in the file", example: "" },
  TAG_RESOLVE_FAILED: {
    expected: "the value alone, in quotes where it begins with !",
    example: "",
  },
  NON_STRING_KEY: pairOnLine,
  BAD_INDENT: sameColumn,
};

const byMessage: readonly (readonly [RegExp, Words])[] = [
  [/^Flow |flow-(?:seq|map)-end/, closing],
  [
    /closing .quote/,
    { expected: "a closing quote", example: 'name: "Pen", with both quotes on one line' },
  ],
  [
    /^Sequence item without|block-seq-ind/,
    { expected: 'each entry of a list on its own line, after "- "', example: '"- reuteri"' },
  ],
  [/^Implicit (?:map )?keys/, pairOnLine],
];

const anythingElse: Words = {
  expected: 'lines such as "key: value", indented under their heading',
  example: "room: 17..24",
};

const wordsFor = (error: YAMLError): Words =>
  byMessage.find(([pattern]) => pattern.test(error.message))?.[1] ??
  byCode[error.code] ??
  anythingElse;

/** "a: b: c"; without the second colon the parser's complaint is about where the line begins. */
const hasTwoColons = (line: string): boolean => /:\s.*:(?:\s|$)/.test(line);

/** What should have stood there, and an example, for one complaint about a line. */
export const syntaxWords = (error: YAMLError, line: string): Words => {
  if (error.code === "BLOCK_AS_IMPLICIT_KEY" && !hasTwoColons(line)) return sameColumn;
  return wordsFor(error);
};
