import { expect, it } from "vitest";
import { nothingRead } from "../../src/kitchen-analysis/nothing-read.ts";
import type { TestAnalysis } from "../../src/kitchen-analysis-types.ts";
import { failed } from "../../src/problem.ts";

const missing = failed("raw-file-missing", { file: "readings/night.csv" });
const unread = { problem: missing.ok ? null : missing.problem } as TestAnalysis;
const read = { problem: null } as TestAnalysis;

it("refuses a kitchen of whose tests none can be read, and says why once", () => {
  const refused = nothingRead({ tests: [unread, unread] });
  expect(refused).toMatchObject({ problem: { code: "no-test-readable", facts: { count: 2 } } });
  expect(JSON.stringify(refused).split("night.csv")).toHaveLength(2);
});

it("lets pass a kitchen with one that can, or with none at all", () => {
  expect(nothingRead({ tests: [unread, read] })).toBeNull();
  expect(nothingRead({ tests: [] })).toBeNull();
});
