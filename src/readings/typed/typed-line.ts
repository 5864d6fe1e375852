/** One line of what a person types, to a time and temperatures. */
import { done } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import { readTypedTime } from "./typed-time.ts";
import type { TypedLine, TypedValue } from "./typed-types.ts";
import { isNotTaken, readTypedValue } from "./typed-value.ts";
import { unread } from "./unread.ts";

interface Parts {
  readonly text: string;
  readonly comment: string | null;
  readonly confirmed: boolean;
}

/** Comment and "!" off; signs that part columns become blanks; a unit joins its number. */
const partsOf = (typed: string): Parts => {
  const at = typed.indexOf("#");
  const said =
    at === -1
      ? ""
      : typed
          .slice(at + 1)
          .trim()
          .replaceAll(/\p{C}+|\s+/gu, " ");
  const bare = (at === -1 ? typed : typed.slice(0, at)).trim();
  const text = bare
    .replace(/!$/u, "")
    .replaceAll(/[;|\t]|,(?=\s)/gu, " ")
    .replaceAll(/(\d)\s*(?:°|º|deg)?\s*([CF])(?=\s|$)/giu, "$1$2")
    .trim();
  return { text, comment: said === "" ? null : said, confirmed: bare.endsWith("!") };
};

const example = (probes: readonly string[]): string =>
  `22:30 ${probes.map((_, at) => (41.2 - at).toFixed(1)).join(" ")}`;

/** "one temperature" or "3 temperatures (Jar, Bath, Room)". */
const wanted = (probes: readonly string[]): string =>
  probes.length === 1
    ? "one temperature after the time"
    : `${probes.length} temperatures after the time (${probes.join(", ")})`;

const wrongCount = (line: number | null, words: readonly string[], probes: readonly string[]) => {
  const dash = probes.length === 1 ? "" : ", with - for one that was not taken";
  const found = words.length === 0 ? "no temperature" : words.join(" ");
  return unread(line, wanted(probes), found, `Write it like ${example(probes)}${dash}.`);
};

const readValues = (
  line: number | null,
  words: readonly string[],
  probes: readonly string[],
): Outcome<readonly (TypedValue | null)[]> => {
  const values: (TypedValue | null)[] = [];
  for (const word of words) {
    const value = isNotTaken(word) ? null : readTypedValue(word);
    if (value === null && !isNotTaken(word))
      return unread(line, "a temperature such as 41.2, 41,2 or 106.2F", word, "Type it again.");
    values.push(value);
  }
  if (values.length !== probes.length) return wrongCount(line, words, probes);
  if (values.every((value) => value === null))
    return unread(line, "at least one temperature", words.join(" "), "Leave the line out.");
  return done(values);
};

/**
 * Reads one line: a time (`readTypedTime`), then one temperature for each
 * probe in their order, `-` for one not taken, `!` at the end where an odd
 * value is right, and a comment after `#`. `line` is its number in a piped
 * text, null at a prompt. Fails with `reading-unread`.
 */
export const readTypedLine = (
  typed: string,
  probes: readonly string[],
  line: number | null = null,
): Outcome<TypedLine> => {
  const { text, comment, confirmed } = partsOf(typed);
  const when = readTypedTime(text);
  if (!when.ok) return unread(line, when.expected, typed, when.advice);
  const words = when.rest === "" ? [] : when.rest.split(/\s+/u);
  const values = readValues(line, words, probes);
  if (!values.ok) return values;
  return done({ time: when.time, values: values.value, comment, confirmed });
};

/** Whether a line says nothing: blank, or a comment alone. */
export const isBlankLine = (typed: string): boolean => partsOf(typed).text === "";
