import { describe, expect, it } from "vitest";
import type { OpenTestFile } from "../../src/kitchen-analysis/kitchen-options.ts";
import { readTest, startedAt } from "../../src/kitchen-analysis/read-test.ts";
import { testRequest } from "../../src/kitchen-analysis/test-request.ts";
import type { TestFile } from "../../src/kitchen/kitchen.ts";
import { done, failed, type Problem } from "../../src/problem.ts";
import {
  jar,
  kitchenOf,
  nightText,
  opener,
  options,
  testFile,
  waterTest,
} from "./small-kitchen.ts";

const evening = Date.UTC(2026, 2, 14, 20);
const dated = nightText({ level: 38, startsAt: evening });
/** The same by the clock alone. */
const clockOnly = dated.replaceAll(/\d{4}-\d\d-\d\d /g, "");

const read = (texts: Readonly<Record<string, string>>, more: Partial<TestFile> = {}) => {
  const files = Object.keys(texts).map((path) => Object.assign(testFile(path, [jar]), more));
  return readWith(files, opener(texts));
};
const readWith = async (files: readonly TestFile[], open: OpenTestFile) => {
  const test = waterTest("night", files);
  const nights = await readTest(test, testRequest(test, kitchenOf([test]), options, []), open);
  return { test, nights };
};
const start = async (...said: Parameters<typeof read>) => {
  const { test, nights } = await read(...said);
  return nights.ok ? startedAt(test, nights.value) : nights.problem.code;
};

async function* brokenChunks(): AsyncGenerator<Uint8Array> {
  yield new TextEncoder().encode(dated.slice(0, 400));
  throw new Error("the disk went away");
}

/** Opens a source that breaks off, and may know why. */
const breaking =
  (problem: Problem | null): OpenTestFile =>
  () =>
    Promise.resolve(
      done({
        name: "night.csv",
        chunks: brokenChunks(),
        sha256: () => "",
        broken: () => problem,
      }),
    );

describe("readTest", () => {
  it("reads all files of a test and finds their nights", async () => {
    const { nights } = await read({ "a.csv": dated, "b.csv": dated });
    expect(nights).toMatchObject({ value: { probes: [{ fileIndex: 0 }, { fileIndex: 1 }] } });
  });

  it("passes on why a file could not be opened", async () => {
    const { nights } = await readWith([testFile("gone.csv", [])], opener({}));
    expect(nights).toMatchObject({ ok: false, problem: { code: "raw-file-missing" } });
  });

  it("takes a known reason for breaking off as that test's problem", async () => {
    const { problem } = failed("file-unreadable", { file: "night.csv", why: "it went away" });
    const { nights } = await readWith([testFile("night.csv", [])], breaking(problem));
    expect(nights).toEqual({ ok: false, problem });
  });

  it("does not hide a failure nobody can explain", async () => {
    const found = readWith([testFile("night.csv", [])], breaking(null));
    await expect(found).rejects.toThrow("went away");
  });
});

describe("startedAt", () => {
  it("is the first reading's clock, where the date is known", async () => {
    expect(await start({ "a.csv": dated })).toBe(evening);
    expect(await start({ "a.csv": clockOnly })).toBeNull();
    expect(await start({ "a.csv": clockOnly }, { startsAt: evening + 60_000 })).toBe(
      evening + 60_000,
    );
  });

  it("is told by one dated file for all that ran together", async () => {
    expect(await start({ "a.csv": clockOnly, "b.csv": dated })).toBe(evening);
  });
});
