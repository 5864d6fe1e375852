import { expect, it } from "vitest";
import { questionInWords } from "../../../src/page/work/question-words.ts";
import { questionWords } from "../../../src/cli/kitchen/question-words.ts";
import { thermometerModel } from "../../../src/thermometer/thermometer-model.ts";

it("says what the command line says, in both units", () => {
  const { questions } = thermometerModel({
    resolution: 0.1,
    accuracy: 1,
    checks: [{ kind: "ice", readings: [3.5, 3.6, 3.5], date: "2026-02-14", confirmed: false }],
  });
  expect(questions.length).toBeGreaterThan(0);
  for (const question of questions) {
    for (const unit of ["degC", "degF"] as const) {
      expect(questionInWords(question, unit)).toBe(questionWords(question, unit));
    }
  }
});
