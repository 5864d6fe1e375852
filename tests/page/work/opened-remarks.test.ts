import { describe, expect, it } from "vitest";
import { openedRemarks } from "../../../src/page/work/opened-remarks.ts";
import { kitchenOf, testFile, waterTest } from "../../kitchen-analysis/small-kitchen.ts";

const kitchen = kitchenOf([waterTest("one", [testFile("readings/a.csv", [])])]);
const nothing = { found: new Map(), problems: [], others: [] };
const missing = (...paths: readonly string[]) => paths.map((path) => ({ test: "one", path }));

describe("what became of opened files", () => {
  it("is told in the singular and the plural", () => {
    expect(
      openedRemarks({ name: "kitchen.yaml", kitchen }, nothing, missing("readings/a.csv")),
    ).toEqual([
      "Opened kitchen.yaml with 1 water test.",
      "Still missing: readings/a.csv. Open it too; until then its test counts for nothing.",
    ]);
    const others = { ...nothing, others: ["b.csv", "c.csv"] };
    expect(openedRemarks({ name: null, kitchen }, others, [])).toEqual([
      "Left aside: b.csv, c.csv. No water test of this kitchen lists them; new readings are entered as a new water test.",
    ]);
  });

  it("names no more than a few", () => {
    const paths = Array.from({ length: 9 }, (_, at) => `readings/${at}.csv`);
    const [, text] = openedRemarks({ name: "k.yaml", kitchen }, nothing, missing(...paths));
    expect(text).toContain("readings/4.csv and 4 more.");
  });

  it("tells the same problem once", () => {
    const problem = { code: "file-empty", facts: { file: "a.csv" } } as const;
    const found = { ...nothing, problems: [problem, problem] };
    expect(openedRemarks({ name: null, kitchen }, found, [])).toHaveLength(1);
  });
});
