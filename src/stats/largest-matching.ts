/**
 * Finds a place for `row`, moving those placed before where they can move.
 * Method: an augmenting path, depth first.
 */
const place = (
  row: number,
  pairs: readonly (readonly boolean[])[],
  rowAt: number[],
  seen: boolean[],
): boolean => {
  for (const [column, possible] of pairs[row]!.entries()) {
    if (!possible || seen[column] === true) continue;
    seen[column] = true;
    const holder = rowAt[column];
    if (holder === undefined || place(holder, pairs, rowAt, seen)) {
      rowAt[column] = row;
      return true;
    }
  }
  return false;
};

/**
 * How many rows can be placed at once, one column each, no column twice;
 * `pairs[row][column]` says whether those two go together. Rows times pairs
 * steps at most (Berge 1957: a matching is largest when no path augments it).
 * 0 without rows or columns.
 */
export const largestMatching = (pairs: readonly (readonly boolean[])[]): number => {
  const rowAt: number[] = [];
  return pairs.filter((_, row) => place(row, pairs, rowAt, [])).length;
};
