import { describe, expect, it } from "vitest";
import { editedKitchen } from "../../../src/input/kitchen/edit-kitchen-text.ts";
import type { KitchenEdit } from "../../../src/input/kitchen/edit-kitchen-text.ts";
import { done, failed } from "../../../src/problem.ts";
import { file, problemOf, sampleKitchen, sampleText, valueOf } from "../sample-kitchen.ts";

const same: KitchenEdit = ({ text }) => done(text);
const stop: KitchenEdit = () => failed("stopped", { what: "all" });

describe("editedKitchen", () => {
  it("gives the text with the kitchen before and after it", () => {
    const edited = valueOf(
      editedKitchen(sampleText, file, (found) => {
        expect(found).toEqual({ text: sampleText, file, kitchen: sampleKitchen });
        return done(found.text.replace("unit: C", "unit: F"));
      }),
    );
    expect(edited.before.shownUnit).toBe("degC");
    expect(edited.after.shownUnit).toBe("degF");
    expect(edited.text).toBe(sampleText.replace("unit: C", "unit: F"));
  });

  it("fails with a text that is no kitchen, before or after, and with the edit's own problem", () => {
    expect(problemOf(editedKitchen("unit: Q\n", file, same)).code).toBe("kitchen-invalid");
    expect(problemOf(editedKitchen(sampleText, file, () => done("unit: Q\n"))).code).toBe(
      "kitchen-invalid",
    );
    expect(problemOf(editedKitchen(sampleText, file, stop)).code).toBe("stopped");
  });
});
