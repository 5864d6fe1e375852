/** Names, notes, file paths and hashes as they may stand in a kitchen file. */

const control = /\p{Cc}|\p{Zl}|\p{Zp}|\p{Cs}|[\u202A-\u202E\u2066-\u2069]/u;
const longestName = 60;
const longestHeading = 200;
const longestNote = 5000;

const line = (text: string, longest: number): string | null => {
  const name = text.trim();
  return name === "" || [...name].length > longest || control.test(name) ? null : name;
};

/** Any letters, none of them invisible, at most 60; spaces around it are dropped. */
export const readName = (text: string): string | null => line(text, longestName);

/** A column's heading or name in a logger's file: longer than a name of ours. */
export const readHeading = (text: string): string | null => line(text, longestHeading);

/** A text that may run over several lines. */
export const readNote = (text: string): string | null => {
  const note = text.trim();
  return note.length > longestNote || control.test(note.replaceAll(/\s/g, " ")) ? null : note;
};

/**
 * A path inside the kitchen folder: relative, forward slashes, no step out or
 * in place, no drive letter.
 */
export const readPath = (text: string): string | null => {
  if (text.length > 500 || control.test(text) || text.includes("\\")) return null;
  if (/^[A-Za-z]:/.test(text)) return null;
  const steps = text.split("/");
  return steps.some((part) => part.trim() === "" || /^\.{1,2}$/.test(part.trim())) ? null : text;
};

/** 64 hexadecimal digits, given back in small letters. */
export const readSha256 = (text: string): string | null =>
  /^[0-9a-f]{64}$/i.test(text.trim()) ? text.trim().toLowerCase() : null;

/** One of a few words, capitals and doubled spaces aside. */
export const readWord =
  <Word extends string>(words: readonly Word[]) =>
  (text: string): Word | null => {
    const wanted = text.trim().toLowerCase().replaceAll(/\s+/g, " ");
    return words.find((word) => word === wanted) ?? null;
  };
