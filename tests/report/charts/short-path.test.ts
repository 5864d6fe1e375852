import { expect, it } from "vitest";
import { shortPath } from "../../../src/report/charts/short-path.ts";

/** Reads a path of M, L, l and Z back to points by the grammar of SVG 2, 9.3 (l: relative, pairs may follow on). */
const pointsOf = (path: string): [number, number][] => {
  let at: [number, number] = [0, 0];
  return [...path.matchAll(/([MLl])([^MLlZ]*)/g)].flatMap(([, command, numbers]) => {
    const found = numbers!.match(/-?(?:\d+\.?\d*|\.\d+)/g)!.map(Number);
    return Array.from({ length: found.length / 2 }, (_, pair): [number, number] => {
      const [x, y] = [found[2 * pair]!, found[2 * pair + 1]!];
      at = command === "l" ? [at[0] + x, at[1] + y] : [x, y];
      return at;
    });
  });
};

/** Constructed: a slow wave of many points. */
const long = Array.from(
  { length: 400 },
  (_, at) =>
    `${at === 0 ? "M" : "L"}${(at * 1.517).toFixed(2)},${(90 - 40 * Math.sin(at / 9)).toFixed(2)}`,
).join("");

it("keeps every point to a twentieth of a px, with no error adding up, in half the bytes", () => {
  const short = shortPath(long);
  const [before, after] = [pointsOf(long), pointsOf(short)];
  expect(after.length).toBe(before.length);
  after.forEach(([x, y], at) => {
    expect(Math.abs(x - before[at]![0])).toBeLessThanOrEqual(0.0501);
    expect(Math.abs(y - before[at]![1])).toBeLessThanOrEqual(0.0501);
  });
  expect(short.length).toBeLessThan(long.length * 0.65);
});

it("keeps gaps as gaps and shapes closed", () => {
  const [first, second] = [long, long.replaceAll(",", ",1")];
  const short = shortPath(`${first}${second}Z`);
  expect(short.match(/M/g)!.length).toBe(2);
  expect(short.endsWith("Z")).toBe(true);
});

it("leaves short paths and curves alone, and drops steps to where it is", () => {
  expect(shortPath("M0,92.1h608v25.6h-608Z")).toBe("M0,92.1h608v25.6h-608Z");
  expect(shortPath("M5,0A5,5,0,1,1,-5,0L1,1L2,2L3,3L4,4L5,5L6,6")).toContain("A5,5");
  expect(shortPath("M1,1L2,1L2,1.01L2.5,0.5L3,1L3,1L4,1L5,2")).toBe("M1,1l1,0 .5-.5 .5,.5 1,0 1,1");
});
