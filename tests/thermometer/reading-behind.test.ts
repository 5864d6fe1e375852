import { expect, it } from "vitest";
import { applyCorrection } from "../../src/thermometer/correction-at.ts";
import type { CorrectionModel } from "../../src/thermometer/correction-model.ts";
import { readingBehind } from "../../src/thermometer/reading-behind.ts";

const line: CorrectionModel = {
  centre: 50,
  correction: -0.8,
  slope: -0.012,
  components: [],
  from: "measured",
  accuracy: null,
};

it("undoes a correction that is a line", () => {
  // By hand: a reading of 40 is corrected by -0.8 - 0.012 (40 - 50) = -0.68.
  expect(readingBehind(line, 39.32)).toBeCloseTo(40, 12);
  for (const reading of [0.2, 38, 99.1]) {
    const [celsius] = applyCorrection(line, Float64Array.of(reading));
    expect(readingBehind(line, celsius!)).toBeCloseTo(reading, 10);
  }
});
