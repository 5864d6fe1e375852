import { describe, expect, it } from "vitest";
import { testDays } from "../../src/kitchen-analysis/test-days.ts";
import type { OpenTestFile } from "../../src/kitchen-analysis/kitchen-options.ts";
import { done, failed } from "../../src/problem.ts";
import { jar, nightText, opener, testFile, waterTest } from "./small-kitchen.ts";

// Constructed nights; their clocks are known.
const evening = Date.UTC(2025, 11, 31, 20);
const dated = nightText({ level: 38, startsAt: evening });
const clockOnly = dated.replaceAll(/\d{4}-\d\d-\d\d /g, "");
const texts = { "dated.csv": dated, "clock.csv": clockOnly, "broken.csv": "nothing here\n" };

const dayOf = async (paths: readonly string[], startsAt: number | null = null) => {
  const files = paths.map((path) => Object.assign(testFile(path, [jar]), { startsAt }));
  const test = waterTest("night", files);
  return (await testDays([test], opener(texts))).map(({ setUp, date }) => [setUp === test, date]);
};

describe("testDays", () => {
  it("tells the day on which the readings begin", async () => {
    expect(await dayOf(["dated.csv"])).toEqual([[true, "2025-12-31"]]);
  });

  it("knows none where the file tells the time of day only, unless somebody said", async () => {
    expect(await dayOf(["clock.csv"])).toEqual([[true, null]]);
    expect(await dayOf(["clock.csv"], Date.UTC(2026, 2, 14, 21))).toEqual([[true, "2026-03-14"]]);
  });

  it("takes the first file that tells it", async () => {
    expect(await dayOf(["clock.csv", "dated.csv"])).toEqual([[true, "2025-12-31"]]);
  });

  it("leaves out what cannot be opened, read, or read to its end", async () => {
    expect(await dayOf(["broken.csv"])).toEqual([]);
    const test = waterTest("night", [testFile("dated.csv", [jar])]);
    const missing = failed("raw-file-missing", { file: "dated.csv" });
    expect(await testDays([test], () => Promise.resolve(missing))).toEqual([]);
    const breaking =
      (known: boolean): OpenTestFile =>
      () =>
        Promise.resolve(
          done({
            name: "dated.csv",
            chunks: brokenChunks(),
            sha256: () => "",
            broken: () => (known ? missing.problem : null),
          }),
        );
    expect(await testDays([test], breaking(true))).toEqual([]);
    await expect(testDays([test], breaking(false))).rejects.toThrow("the disk went away");
  });
});

async function* brokenChunks(): AsyncGenerator<Uint8Array> {
  yield new TextEncoder().encode(dated.slice(0, 400));
  throw new Error("the disk went away");
}
