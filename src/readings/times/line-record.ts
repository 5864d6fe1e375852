/** The line of each accepted row, kept only where lines and rows do not run on together. */
export interface LineRecord {
  add(row: number, line: number): void;
  lineOf(row: number): number;
}

export const createLineRecord = (): LineRecord => {
  const rows: number[] = [];
  const ahead: number[] = [];
  return {
    add: (row, line) => {
      if (ahead.length > 0 && ahead[ahead.length - 1] === line - row) return;
      rows.push(row);
      ahead.push(line - row);
    },
    lineOf: (row) => {
      const run = rows.findLastIndex((first) => first <= row);
      return run < 0 ? row : row + ahead[run]!;
    },
  };
};
