/** Kinds of character in a stamp, by UTF-16 code. */

export const isDigit = (at: number): boolean => at >= 48 && at <= 57;
/** Spaces of any width that stamps are written with, and the underscore. */
export const isSpace = (at: number): boolean =>
  at === 32 || at === 9 || at === 0xa0 || at === 0x202f || at === 0x2009 || at === 95;
/** + , - . / and : */
export const isMark = (at: number): boolean => (at >= 43 && at <= 47) || at === 58;
/** Latin letters, with accents; Greek, Cyrillic and the rest, which then mean nothing. */
export const isLetter = (at: number): boolean =>
  ((at | 32) >= 97 && (at | 32) <= 122) || (at >= 0xc0 && at < 0x2000);

/** A half of the day from `at` on ("PM", "p.m.", "p. m."): where it ends, or -1. */
export const halfEnd = (cell: string, at: number): number => {
  const letter = cell.charCodeAt(at) | 32;
  if (letter !== 97 && letter !== 112) return -1;
  if ((cell.charCodeAt(at + 1) | 32) === 109 && !isLetter(cell.charCodeAt(at + 2)))
    return cell[at + 2] === "." ? at + 3 : at + 2;
  const dotted = /^[ap]\.[\s\u00a0\u202f]?m\.?(?!\p{L})/iu.exec(cell.slice(at, at + 6));
  return dotted === null ? -1 : at + dotted[0].length;
};
