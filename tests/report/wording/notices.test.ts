import { expect, it } from "vitest";
import { notice } from "../../../src/notice.ts";
import { noticeSentence, noticeSentences } from "../../../src/report/wording/notices.ts";
import { plainWriting, terminalWriting } from "../../../src/report/writing.ts";

const assumed = notice("assumed-thermometer", { accuracy: 1 });

it("gives an accuracy in both units, the reader's first", () => {
  expect(noticeSentence(assumed, plainWriting("degC"))).toContain("good to ±1 °C (±1.8 °F).");
  expect(noticeSentence(assumed, plainWriting("degF"))).toContain("good to ±1.8 °F (±1 °C).");
  expect(noticeSentence(assumed, terminalWriting("degC", true))).toMatch(
    /good to \+-1\u00a0degC \(\+-1\.8\u00a0degF\)/,
  );
});

it("says the same thing once", () => {
  const gap = notice("gap", { firstLine: 4, minutes: 35, count: 1 });
  expect(noticeSentences([assumed, gap, assumed], plainWriting("degC"))).toEqual([
    noticeSentence(assumed, plainWriting("degC")),
    expect.stringContaining("the longest 35 min before line 4"),
  ]);
});
