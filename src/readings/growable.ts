/** Numbers in a row, of unknown length: a typed array that doubles when it is full. */
export interface GrowableFloats {
  push(value: number): void;
  length(): number;
  /** The numbers so far; a view, not a copy. */
  view(): Float64Array;
}
export interface GrowableCounts {
  push(value: number): void;
  length(): number;
  view(): Uint32Array;
}
export interface GrowableBytes {
  push(value: number): void;
  length(): number;
  view(): Uint8Array;
}

const firstCapacity = 1024;

export const growableFloats = (): GrowableFloats => {
  let data = new Float64Array(firstCapacity);
  let length = 0;
  return {
    push(value) {
      if (length === data.length) {
        const larger = new Float64Array(2 * length);
        larger.set(data);
        data = larger;
      }
      data[length] = value;
      length += 1;
    },
    length: () => length,
    view: () => data.subarray(0, length),
  };
};

export const growableCounts = (): GrowableCounts => {
  let data = new Uint32Array(firstCapacity);
  let length = 0;
  return {
    push(value) {
      if (length === data.length) {
        const larger = new Uint32Array(2 * length);
        larger.set(data);
        data = larger;
      }
      data[length] = value;
      length += 1;
    },
    length: () => length,
    view: () => data.subarray(0, length),
  };
};

export const growableBytes = (): GrowableBytes => {
  let data = new Uint8Array(firstCapacity);
  let length = 0;
  return {
    push(value) {
      if (length === data.length) {
        const larger = new Uint8Array(2 * length);
        larger.set(data);
        data = larger;
      }
      data[length] = value;
      length += 1;
    },
    length: () => length,
    view: () => data.subarray(0, length),
  };
};
