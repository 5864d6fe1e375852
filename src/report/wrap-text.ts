/**
 * Breaks text at spaces so that no line is longer than `width`. The first line
 * starts with `first`, the others with `rest`; a single longer word stays whole.
 * No-break spaces keep a number with its unit and come out as plain spaces.
 */
export const wrapText = (text: string, width: number, first = "", rest = first): string[] => {
  const lines: string[] = [];
  let line = first;
  let empty = true;
  for (const word of text.split(" ")) {
    if (!empty && length(line) + 1 + length(word) > width) {
      lines.push(line);
      line = rest;
      empty = true;
    }
    line += empty ? word : ` ${word}`;
    empty = false;
  }
  lines.push(line);
  return lines.map((each) => each.replaceAll("\u00a0", " "));
};

/** Characters as shown, near enough: colour codes are put on after wrapping. */
const length = (text: string): number => [...text].length;
