/** What to do with a batch that shows trouble. Said at once, whatever its temperature was. */
import type { Trouble } from "../../kitchen/kitchen.ts";

const names: Readonly<Record<Trouble, string>> = {
  pink: "pink colour",
  orange: "orange colour",
  fuzzy: "fuzz",
  "off-smelling": "a foul smell",
};

const listed = (words: readonly string[]): string =>
  words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;

/** null where nothing was seen. */
export const spoiltBatchText = (trouble: readonly Trouble[]): string | null => {
  if (trouble.length === 0) return null;
  const seen = listed(trouble.map((one) => names[one]));
  return `${seen.replace(/^./, (letter) => letter.toUpperCase())}: throw all of it away. Do not scrape anything off, and do not taste it. Clean everything it touched, and start again from a fresh starter, with nothing of this batch in it.`;
};
