import { describe, expect, it } from "vitest";
import { cultures as catalogue } from "../../../src/culture/catalogue.ts";
import { problemOf, sampleText, tryEdit, typed, valueOf } from "../sample-kitchen.ts";

const own = typed(["low", "30"], ["high", "86F"], ["ceiling", "40"], ["hours", "24"]);

describe("cultureEdit", () => {
  it("takes one in from the catalogue with nothing more said", () => {
    const known = catalogue.find(({ id }) => !sampleText.includes(id))!;
    const { after } = valueOf(tryEdit("culture", [known.id]));
    expect(after.cultures.at(-1)).toMatchObject({
      id: known.id,
      low: known.low,
      hours: known.hours,
    });
  });

  it("needs the figures of one's own, and keeps them as they were typed", () => {
    const said = typed(["low", "84F"], ["high", "90F"], ["ceiling", "95F"], ["hours", "24"]);
    const { text } = valueOf(tryEdit("culture", ["blend"], said));
    expect(text).toContain("84F");
    const { hours: _, ...three } = own;
    expect(problemOf(tryEdit("culture", ["blend"], three))).toMatchObject({
      code: "option-missing",
      facts: { option: "--hours" },
    });
    expect(problemOf(tryEdit("culture", ["reuterii"]))).toMatchObject({
      code: "culture-unknown",
      facts: { suggestion: "reuteri" },
    });
    expect(problemOf(tryEdit("culture", [], own))).toMatchObject({
      facts: { option: "the culture's name" },
    });
  });
});
