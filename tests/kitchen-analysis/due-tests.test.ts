import { describe, expect, it } from "vitest";
import { dueOfSetUp, dueTests } from "../../src/kitchen-analysis/due-tests.ts";
import type { Kitchen } from "../../src/kitchen/kitchen.ts";
import { batch } from "../advice/constructed-batches.ts";
import { jar, kitchenOf, nightText, opener, testFile, waterTest } from "./small-kitchen.ts";

// A constructed kitchen: the cooker was tested on 2026-03-14 and moved on 2026-03-20.
const night = waterTest("night", [testFile("night.csv", [jar])]);
const read: string[] = [];
const open: typeof openText = (file, test) => {
  read.push(file.path);
  return openText(file, test);
};
const openText = opener({
  "night.csv": nightText({ level: 38, startsAt: Date.UTC(2026, 2, 14, 20) }),
});
const { appliance, setting, container } = night;
const setUp = { appliance, setting, container };
const kitchen = ((): Kitchen => {
  const plain = kitchenOf([night]);
  const appliances = plain.appliances.map((one) =>
    Object.assign({}, one, { movedOn: "2026-03-20" }),
  );
  return { ...plain, appliances, batches: [batch({ ...setUp, date: "2026-04-01" })] };
})();

describe("dueTests", () => {
  it("joins the log with the days of the tests", async () => {
    expect(await dueTests(kitchen, "2026-04-02", open)).toEqual([
      {
        setUp,
        lastTested: "2026-03-14",
        reasons: [{ code: "appliance-moved", date: "2026-03-20" }],
        usual: [],
      },
    ]);
  });
});

describe("dueOfSetUp", () => {
  it("says it of one set-up, and reads no test of another", async () => {
    const due = await dueOfSetUp(kitchen, setUp, "2026-04-02", open);
    expect(due).toMatchObject({ lastTested: "2026-03-14", reasons: [{ code: "appliance-moved" }] });
    read.length = 0;
    const other = { ...setUp, appliance: "box" };
    expect(await dueOfSetUp(kitchen, other, "2026-04-02", open)).toEqual({
      setUp: other,
      lastTested: null,
      reasons: [],
      usual: [],
    });
    expect(read).toEqual([]);
  });
});
