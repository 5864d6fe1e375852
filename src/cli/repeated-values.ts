/** Options that take several numbers: `--ice 0.3 -0.2C` as if each had its own flag. */
import type { OptionEntry } from "./entries/command-entry.ts";

const flagOf = (flags: string): string => flags.split(" ")[0] ?? "";

/** A number in any of our spellings; the name of something (an ID) does not start so. */
const startsLikeNumber = (word: string): boolean => /^[+\-−]?[.,]?\d/.test(word);

/**
 * Writes `--ice a b` as `--ice=a --ice=b`. After the first value only words
 * that look like numbers follow, so that an ID may come behind them; negative
 * ones too, which are no options.
 */
export const spreadRepeated = (
  line: readonly string[],
  options: readonly OptionEntry[],
): readonly string[] => {
  const several = options.filter(([, flags]) => flags.endsWith("...>"));
  const repeated = new Set(several.map(([, flags]) => flagOf(flags)));
  const spread: string[] = [];
  let open: string | null = null;
  let awaited = false;
  for (const word of line) {
    const flag = word.split("=")[0] ?? "";
    if (awaited || (open !== null && startsLikeNumber(word))) spread.push(`${open}=${word}`);
    else if (word !== flag || !repeated.has(flag)) spread.push(word);
    const opens: boolean = !awaited && repeated.has(flag);
    if (opens) open = flag;
    else if (!awaited && !startsLikeNumber(word)) open = null;
    awaited = opens && word === flag;
  }
  return awaited && open !== null ? [...spread, open] : spread;
};
