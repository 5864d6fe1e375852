/**
 * Seeded random numbers for the simulator. The generator is sfc32 (Chris
 * Doty-Humphrey's small fast counting generator, as in PractRand), seeded
 * through splitmix32. A label gives an independent stream, so that a new draw
 * in one part of a case does not shift the others.
 */
export interface Random {
  /** Uniform on [0, 1). */
  readonly next: () => number;
  readonly uniform: (low: number, high: number) => number;
  /** Uniform in the logarithm; both limits above zero. */
  readonly logUniform: (low: number, high: number) => number;
  /** Whole number, both ends included. */
  readonly integer: (low: number, high: number) => number;
  readonly normal: (mean: number, standardDeviation: number) => number;
  readonly chance: (probability: number) => boolean;
  readonly choice: <Item>(items: readonly Item[]) => Item;
  /** One of the items, each drawn in proportion to its weight. */
  readonly weighted: <Item>(items: readonly (readonly [Item, number])[]) => Item;
}

/** A stream of random numbers that depends on the seed and the label only. */
export function createRandom(seed: number, label: string): Random {
  const next = sfc32(mixed(seed, label));
  const uniform = (low: number, high: number): number => low + (high - low) * next();
  return {
    next,
    uniform,
    logUniform: (low, high) => Math.exp(uniform(Math.log(low), Math.log(high))),
    integer: (low, high) => low + Math.floor(next() * (high - low + 1)),
    normal: (mean, deviation) => mean + deviation * standardNormal(next),
    chance: (probability) => next() < probability,
    choice: (items) => picked(items, Math.floor(next() * items.length)),
    weighted: (items) => byWeight(items, next()),
  };
}

/** FNV-1a over the label, mixed with both halves of the seed. */
function mixed(seed: number, label: string): number {
  let hash = 0x811c9dc5;
  for (const letter of label) hash = Math.imul(hash ^ letter.charCodeAt(0), 0x01000193);
  const high = Math.floor(seed / 2 ** 32);
  return (hash ^ Math.imul(seed | 0, 0x9e3779b1) ^ Math.imul(high, 0x85ebca6b)) >>> 0;
}

function splitmix32(start: number): () => number {
  let state = start | 0;
  return () => {
    state = (state + 0x9e3779b9) | 0;
    let value = state ^ (state >>> 16);
    value = Math.imul(value, 0x21f0aaad);
    value = Math.imul(value ^ (value >>> 15), 0x735a2d97);
    return (value ^ (value >>> 15)) | 0;
  };
}

function sfc32(seed: number): () => number {
  const start = splitmix32(seed);
  let [a, b, c, counter] = [start(), start(), start(), 1];
  const next = (): number => {
    const sum = (((a + b) | 0) + counter) | 0;
    counter = (counter + 1) | 0;
    a = b ^ (b >>> 9);
    b = (c + (c << 3)) | 0;
    c = (((c << 21) | (c >>> 11)) + sum) | 0;
    return (sum >>> 0) / 2 ** 32;
  };
  for (let round = 0; round < 12; round += 1) next();
  return next;
}

/** Box and Muller 1958; the second of each pair is not kept, so no state hides here. */
function standardNormal(next: () => number): number {
  const radius = Math.sqrt(-2 * Math.log(1 - next()));
  return radius * Math.cos(2 * Math.PI * next());
}

function byWeight<Item>(items: readonly (readonly [Item, number])[], at: number): Item {
  let left = at * items.reduce((sum, [, weight]) => sum + weight, 0);
  const index = items.findIndex(([, weight]) => (left -= weight) < 0);
  return picked(items, index < 0 ? items.length - 1 : index)[0];
}

function picked<Item>(items: readonly Item[], index: number): Item {
  const item = items[index];
  if (item === undefined) throw new RangeError("nothing to choose from");
  return item;
}
