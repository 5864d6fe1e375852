import { slug } from "../../../input/water-test/test-id.ts";

/** What kitchen.yaml calls a new entry: its name in plain letters, with a number where that is taken; null for none. */
export const newId = (name: string, taken: readonly string[]): string | null => {
  const plain = slug(name);
  if (plain === "") return null;
  const known = new Set(taken);
  if (!known.has(plain)) return plain;
  let number = 2;
  while (known.has(`${plain}-${number}`)) number += 1;
  return `${plain}-${number}`;
};
