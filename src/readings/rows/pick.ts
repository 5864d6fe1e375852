/** The values at some indexes, as arrays of their own. */

export const pick = (values: Float64Array, indexes: Uint32Array): Float64Array => {
  const picked = new Float64Array(indexes.length);
  for (let at = 0; at < indexes.length; at += 1) picked[at] = values[indexes[at]!]!;
  return picked;
};

export const pickBytes = (bytes: Uint8Array, indexes: Uint32Array): Uint8Array => {
  const picked = new Uint8Array(indexes.length);
  for (let at = 0; at < indexes.length; at += 1) picked[at] = bytes[indexes[at]!]!;
  return picked;
};

export const pickCounts = (counts: Uint32Array, indexes: Uint32Array): Uint32Array => {
  const picked = new Uint32Array(indexes.length);
  for (let at = 0; at < indexes.length; at += 1) picked[at] = counts[indexes[at]!]!;
  return picked;
};

/** Indexes of the marks that are 1. */
export const indexesOf = (marks: Uint8Array): Uint32Array => {
  let count = 0;
  for (const mark of marks) count += mark;
  const indexes = new Uint32Array(count);
  let next = 0;
  for (let at = 0; at < marks.length; at += 1) {
    if (marks[at] !== 1) continue;
    indexes[next] = at;
    next += 1;
  }
  return indexes;
};
