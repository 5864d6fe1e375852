import fc from "fast-check";
import { expect, it } from "vitest";
import { probabilityText } from "../../../src/report/wording/probability.ts";

it.each([
  [0, "< 1 %"],
  [0.05, "5 %"],
  [0.0501, "just over 5 %"],
  [0.06, "6 %"],
  [0.5, "50 %"],
  [0.944, "94 %"],
  [0.9499, "just under 95 %"],
  [0.95, "95 %"],
  [1, "> 99 %"],
])("writes %d as %s", (probability, text) => {
  expect(probabilityText(probability, 0.95, " ")).toBe(text);
});

it("never contradicts the verdict, whatever confidence was asked for", () => {
  const confidences = fc.integer({ min: 51, max: 99 }).map((percent) => percent / 100);
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 1, noNaN: true }),
      confidences,
      (probability, confidence) => {
        const text = probabilityText(probability, confidence, " ");
        const limit = `${Math.round(confidence * 100)} %`;
        if (probability < confidence && probability < 0.99) expect(text).not.toBe(limit);
        expect(text).not.toMatch(/^(?:0|100) %$/);
      },
    ),
  );
});
