/** "Did you mean": the nearest of the names there are to one that is not among them. */

/** Fewest single-letter insertions, deletions and replacements from one word to the other (Levenshtein). */
export const editDistance = (a: string, b: string): number => {
  let row = Array.from({ length: b.length + 1 }, (_, index) => index);
  for (let i = 1; i <= a.length; i += 1) {
    const next = [i];
    for (let j = 1; j <= b.length; j += 1) {
      const replaced = row[j - 1]! + Number(a[i - 1] !== b[j - 1]);
      next.push(Math.min(replaced, row[j]! + 1, next[j - 1]! + 1));
    }
    row = next;
  }
  return row[b.length]!;
};

/** Longer words are not compared: nobody mistypes one, and the time grows with both lengths. */
const longest = 100;

/** Slips one forgives: none in a number or a letter, one in a short word, a third of a long one. */
const slipsAllowed = (word: string): number => {
  if (word.length < 2 || /^[\d.,+-]+$/.test(word)) return 0;
  return word.length <= 3 ? 1 : Math.max(2, Math.floor(word.length / 3));
};

/**
 * The nearest of `names` to what was typed, capitals aside; "" where none is
 * near. Of equally near ones the first. Time grows with the number of names
 * and the product of the lengths.
 */
export const nearestName = (typed: string, names: Iterable<string>): string => {
  const wanted = typed.trim().toLowerCase();
  if (wanted === "" || wanted.length > longest) return "";
  let nearest = "";
  let fewest = slipsAllowed(wanted) + 1;
  for (const name of names) {
    if (Math.abs(name.length - wanted.length) >= fewest) continue;
    const slips = editDistance(wanted, name.toLowerCase());
    if (slips < fewest) [nearest, fewest] = [name, slips];
  }
  return nearest;
};
