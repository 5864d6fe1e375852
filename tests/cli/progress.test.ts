import { describe, expect, it } from "vitest";
import { startProgress } from "../../src/cli/progress.ts";

const watch = (steps: readonly (readonly [atMilliseconds: number, bytes: number])[]) => {
  const lines: string[] = [];
  let now = 1000;
  const progress = startProgress(
    (line) => lines.push(line),
    () => 4e6,
    () => now,
  );
  for (const [at, bytes] of steps) {
    now = 1000 + at;
    progress.add(bytes);
  }
  progress.end();
  return lines;
};

describe("startProgress", () => {
  it("is silent on short work, and has nothing to wipe", () => {
    expect(
      watch([
        [10, 1e6],
        [400, 1e6],
        [499, 2e6],
      ]),
    ).toEqual([]);
  });

  it("speaks after half a second, a few times a second, and wipes itself", () => {
    expect(
      watch([
        [100, 1e6],
        [600, 1e6],
        [650, 1e6],
        [900, 1e6],
      ]),
    ).toEqual(["Reading: 2 of 4 MB", "Working out the hold and the verdicts", ""]);
  });

  it("says nothing where nobody watches", () => {
    let now = 0;
    const progress = startProgress(
      null,
      () => 10,
      () => (now += 1000),
    );
    progress.add(5);
    expect(() => progress.end()).not.toThrow();
  });
});
