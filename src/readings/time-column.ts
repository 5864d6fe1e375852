/** A column of numbers that grows by doubling. */
export interface NumberColumn {
  readonly length: number;
  push(value: number): void;
  /** NaN beyond the end. */
  at(index: number): number;
  /** The numbers so far, sharing memory with the column. */
  values(): Float64Array;
}

export const createColumn = (): NumberColumn => {
  let store = new Float64Array(1024);
  let length = 0;
  return {
    get length() {
      return length;
    },
    push: (value) => {
      if (length === store.length) {
        const larger = new Float64Array(length * 2);
        larger.set(store);
        store = larger;
      }
      store[length++] = value;
    },
    at: (index) => (index < length ? store[index]! : NaN),
    values: () => store.subarray(0, length),
  };
};

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
