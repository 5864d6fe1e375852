import { expect, it } from "vitest";
import type { KitchenAnalysis } from "../../../src/kitchen-analysis-types.ts";
import { notice } from "../../../src/notice.ts";
import type { Notice } from "../../../src/notice.ts";
import { kitchenNotes } from "../../../src/report/wording/kitchen-notes.ts";
import { plainWriting } from "../../../src/report/writing.ts";
import { sampleKitchen } from "../sample-kitchen.ts";

const writing = plainWriting("degC");
const unnamed = notice("probes-without-thermometer", { probes: '"Jar"', accuracy: 1 });

/** The same notice in each of the kitchen's tests. */
const everywhere = (inFiles: readonly Notice[] = []): KitchenAnalysis => {
  const kitchen = sampleKitchen();
  const tests = kitchen.tests.map((test) => {
    if (test.analysis === null) return test;
    const files = test.analysis.files.map((file) => ({
      ...file,
      readings: { ...file.readings, notices: inFiles },
    }));
    return { ...test, analysis: { ...test.analysis, files, notices: [unnamed, unnamed] } };
  });
  return { ...kitchen, tests };
};

it("says of which tests it speaks, and says it once", () => {
  const kitchen = everywhere();
  const ids = kitchen.tests.flatMap(({ test, analysis }) => (analysis === null ? [] : [test.id]));
  const about = kitchenNotes(kitchen, writing).filter((text) => text.includes("No thermometer"));
  expect(about).toEqual([
    expect.stringMatching(
      new RegExp(`^Tests? ${ids.join(", ")}: No thermometer is named for "Jar"`),
    ),
  ]);
});

it("leaves out what the test's file already tells", () => {
  expect(kitchenNotes(everywhere([unnamed]), writing).join()).not.toContain("No thermometer");
});
