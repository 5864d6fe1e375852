/**
 * Quotes of one delimited line, looked at closely only where a line has any.
 * A quote opens a field only where the field begins with it; a field so opened
 * ends at a lone quote followed by the delimiter or the line's end. Anything
 * else is not a quoted field but text with a stray quote.
 */
export type QuoteState = "closed" | "open" | "broken";

const quote = '"';

/** Index just after the closing quote, or -1 when the line ends inside the field. */
const closeAt = (line: string, from: number): number => {
  let at = from;
  for (;;) {
    const found = line.indexOf(quote, at);
    if (found === -1) return -1;
    if (line[found + 1] !== quote) return found + 1;
    at = found + 2;
  }
};

/**
 * How a line leaves its quotes: `open` when a quoted field goes on in the next
 * line, `broken` when a closing quote is followed by more text. `inside` says
 * that the line begins inside a quoted field.
 */
export const quoteStateAfter = (line: string, delimiter: string, inside: boolean): QuoteState => {
  let at = 0;
  let opened = inside;
  for (;;) {
    if (opened || line[at] === quote) {
      at = closeAt(line, opened ? at : at + 1);
      opened = false;
      if (at === -1) return "open";
      if (at >= line.length) return "closed";
      if (line[at] !== delimiter) return "broken";
    } else {
      at = line.indexOf(delimiter, at);
      if (at === -1) return "closed";
    }
    at += 1;
  }
};

/** Blanks between delimiter and quote taken out, so that the quote opens its field. */
export const tightenQuotes = (line: string, delimiter: string): string =>
  line.includes(` ${quote}`) || line.includes(`${quote} `)
    ? line
        .split(delimiter)
        .map((cell) => (/^ *"|" *$/u.test(cell) ? cell.trim() : cell))
        .join(delimiter)
    : line;

/** The line with every quote made plain text: a field that begins with a blank is not a quoted one. */
export const neutraliseQuotes = (line: string): string => line.replaceAll(quote, ` ${quote}`);
