/** A word as one types it at a shell. */

/** In single quotes where it holds anything a shell would read otherwise. */
export const quoted = (word: string): string =>
  /^[\p{L}\p{N}_./=:,@%+-]+$/u.test(word) ? word : `'${word.replaceAll("'", `'\\''`)}'`;
