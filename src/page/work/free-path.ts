/** Where a new logger's file lies in the kitchen folder. */
import { numberedName, rawFileName } from "../../folder/raw-name.ts";

const readingsFolder = "readings";

/** What some systems take for one name: capitals and the composition of accents do not count. */
const folded = (path: string): string => path.normalize("NFC").toLowerCase();

/** A path in readings/ that nothing else has: the file's own name, made portable, with a number where it is taken. */
export const freePath = (name: string, taken: Iterable<string>): string => {
  const used = new Set(Array.from(taken, folded));
  const plain = rawFileName(name);
  for (let number = 1; ; number += 1) {
    const path = `${readingsFolder}/${numberedName(plain, number)}`;
    if (!used.has(folded(path))) return path;
  }
};
