import { expect, it } from "vitest";
import { answerText, probeName, requirementText } from "../../../src/report/wording/answers.ts";
import { plainWriting } from "../../../src/report/writing.ts";
import { nightSeries, requirement, verdict } from "../sample-analysis.ts";

const writing = plainWriting("degC");
const asked = requirement("window", 38, 43, 45, 24);

it("says what was asked for", () => {
  expect(requirementText(asked, writing)).toBe(
    "38 to 43 °C (100.4 to 109.4 °F) for 24 h, never above 45 °C (113 °F)",
  );
});

it("answers in one sentence, and tells bath from food", () => {
  const holds = verdict("holds", 0.97, { ...asked, ceiling: null }, []);
  expect(answerText(holds, "food", writing)).toBe(
    "This set-up keeps the food at 38 to 43 °C (100.4 to 109.4 °F) for 24 h.",
  );
  const misses = verdict("misses", 0.01, requirement("kefir", 18, 24, null, 24), []);
  expect(answerText(misses, "bath", writing)).toBe(
    "This set-up does not keep the bath (not the food in it) at 18 to 24 °C (64.4 to 75.2 °F) for 24 h, as “Kefir (grains)” needs.",
  );
});

it("names the file only where there are several", () => {
  const shape = { level: 40, swing: 0, periodMinutes: 9, perHour: 0, stepSeconds: 600, hours: 3 };
  const series = nightSeries(shape, "jar", "food");
  expect(probeName(series, "a.csv", false)).toBe("jar");
  expect(probeName(series, "a.csv", true)).toBe("jar in a.csv");
});
