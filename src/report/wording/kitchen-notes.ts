/** Notices of a kitchen and of its tests, without those that a test's file already tells. */
import type { KitchenAnalysis } from "../../kitchen-analysis-types.ts";
import { readTests } from "../kitchen-page.ts";
import type { Writing } from "../writing.ts";
import { noticeSentences } from "./notices.ts";

/** Each once; a test's own under the test's name: "Test one-night: No thermometer is named ...". */
export const kitchenNotes = (analysis: KitchenAnalysis, writing: Writing): readonly string[] => {
  const testsBehind = new Map<string, readonly string[]>();
  for (const { test, analysis: read } of readTests(analysis)) {
    const inFiles = noticeSentences(
      read.files.flatMap(({ readings }) => readings.notices),
      writing,
    );
    for (const text of noticeSentences(read.notices, writing)) {
      if (inFiles.includes(text)) continue;
      testsBehind.set(text, [...(testsBehind.get(text) ?? []), test.id]);
    }
  }
  const ofTests = [...testsBehind].map(
    ([text, ids]) => `${ids.length === 1 ? "Test" : "Tests"} ${ids.join(", ")}: ${text}`,
  );
  return [...noticeSentences(analysis.notices, writing), ...ofTests];
};
