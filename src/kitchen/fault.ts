/** What is wrong at one place of a kitchen file, and the one sentence that says so. */

/** From the top of the file: names of maps, positions in lists from 0. */
export type DataPath = readonly (string | number)[];

/** A mistake in the data, before anybody looked up its line. */
export interface Mistake {
  readonly path: DataPath;
  /** Whether the key itself is wrong, or what stands under it. */
  readonly at: "key" | "value";
  readonly expected: string;
  readonly found: string;
  /** What one could write; "" where nothing can be offered. */
  readonly example: string;
  /** The name that was probably meant; "" where none is near. */
  readonly suggestion: string;
}

/** A mistake with its line, counted from 1; null where the text is not written yet. */
export interface Fault extends Mistake {
  readonly line: number | null;
}

const shown = 20;
const longestFound = 60;

/** "thermometers > stick > checks > 2": positions count from 1, as people do. */
export const pathInWords = (path: DataPath): string =>
  path.map((part) => (typeof part === "number" ? String(part + 1) : printable(part))).join(" > ");

/** Text of a stranger's file in a sentence: control and direction characters out, long ones cut. */
export const printable = (text: string): string => {
  const plain = text.replaceAll(/[\s\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Cs}]+/gu, " ").trim();
  const letters = [...plain];
  return letters.length > longestFound
    ? `${letters.slice(0, longestFound - 3).join("")}...`
    : plain;
};

/** What was found, for a sentence: a text in quotes, or what else it is. */
export const foundInWords = (value: unknown): string => {
  if (value === null || value === undefined) return "nothing";
  if (Array.isArray(value)) return "a list";
  return typeof value === "string" ? `"${printable(value)}"` : "a group of keys";
};

const placeOf = ({ line, path }: Fault): string => {
  const words = pathInWords(path);
  if (line === null) return words === "" ? "In the file" : `In ${words}`;
  return words === "" ? `Line ${line}` : `Line ${line}, ${words}`;
};

/** One sentence: where, what was expected, what was found, what to write. */
export const faultText = (fault: Fault): string => {
  const { expected, found, example, suggestion } = fault;
  const said = `${placeOf(fault)}: expected ${expected}, found ${found}`;
  if (suggestion !== "") return `${said}; did you mean "${printable(suggestion)}"?`;
  return example === "" ? `${said}.` : `${said}; write for example ${example}.`;
};

/** The sentences of all faults by line, each on its own line; beyond 20 only how many more. */
export const faultList = (faults: readonly Fault[]): string => {
  const inOrder = faults.toSorted((a, b) => (a.line ?? 0) - (b.line ?? 0));
  const lines = inOrder.slice(0, shown).map((fault) => `- ${faultText(fault)}`);
  const left = faults.length - lines.length;
  return [...lines, ...(left > 0 ? [`- and ${left} more.`] : [])].join("\n");
};
