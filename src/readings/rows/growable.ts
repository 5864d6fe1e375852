/** Numbers in a row, of unknown length: a typed array that doubles when it is full. */
export interface Growable<Numbers> {
  readonly length: number;
  push(value: number): void;
  /** NaN beyond the end. */
  at(index: number): number;
  /** The numbers so far; a view, not a copy. */
  view(): Numbers;
}
export type GrowableFloats = Growable<Float64Array>;
export type GrowableCounts = Growable<Uint32Array>;
export type GrowableBytes = Growable<Uint8Array>;

const firstCapacity = 1024;

const growable = <Numbers extends Float64Array | Uint32Array | Uint8Array>(
  create: (capacity: number) => Numbers,
): Growable<Numbers> => {
  let data = create(firstCapacity);
  let length = 0;
  return {
    get length() {
      return length;
    },
    push(value) {
      if (length === data.length) {
        const larger = create(2 * length);
        larger.set(data);
        data = larger;
      }
      data[length] = value;
      length += 1;
    },
    at: (index) => (index < length ? data[index]! : Number.NaN),
    view: () => data.subarray(0, length) as Numbers,
  };
};

export const growableFloats = (): GrowableFloats =>
  growable((capacity) => new Float64Array(capacity));
export const growableCounts = (): GrowableCounts =>
  growable((capacity) => new Uint32Array(capacity));
export const growableBytes = (): GrowableBytes => growable((capacity) => new Uint8Array(capacity));
