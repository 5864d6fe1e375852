/** A cut in a text. */
export interface Splice {
  /** The text from `start` up to `end` gives way to another. */
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/** The text with all cuts made; cuts at the same place in their order. They must not overlap. */
export const spliced = (text: string, splices: readonly Splice[]): string => {
  const inOrder = splices.toSorted((a, b) => a.start - b.start);
  const parts: string[] = [];
  let at = 0;
  for (const { start, end, text: other } of inOrder) {
    parts.push(text.slice(at, start), other);
    at = end;
  }
  return [...parts, text.slice(at)].join("");
};
