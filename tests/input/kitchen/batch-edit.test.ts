import { describe, expect, it } from "vitest";
import { batchEdit, batchNumber, onlyOfBatch } from "../../../src/input/kitchen/batch-edit.ts";
import { batchShape } from "../../../src/input/kitchen/batch-options.ts";
import { editedKitchen } from "../../../src/input/kitchen/edit-kitchen-text.ts";
import {
  file,
  problemOf,
  sampleKitchen,
  sampleText,
  today,
  tryEdit,
  typed,
  valueOf,
} from "../sample-kitchen.ts";

describe("batchEdit", () => {
  it("adds, changes by number and takes out by number", () => {
    const added = valueOf(tryEdit("batch", [], typed(["culture", "reuteri"], ["starter", "5%"])));
    expect(added.after.batches.at(-1)).toMatchObject({ date: today, starter: 0.05 });
    const changed = valueOf(tryEdit("batch", ["2"], typed(["generation", "4"])));
    expect(changed.after.batches.map(({ generation }) => generation)).toEqual([1, 4]);
    const removed = valueOf(tryEdit("batch", ["1"], typed(["remove"])));
    expect(removed.after.batches.map(({ culture }) => culture)).toEqual(["yoghurt"]);
  });

  it.each([
    [[], typed(["remove"]), "option-missing"],
    [["1"], typed(["remove"], ["notes", "n"]), "options-contradict"],
    [[], typed(["culture", "reuteri"], ["date", "2026-11-21"]), "option-invalid"],
    [["3"], typed(["notes", "n"]), "option-invalid"],
    [["one"], typed(["remove"]), "option-invalid"],
  ])("refuses %j with %j", (words, options, code) => {
    expect(problemOf(tryEdit("batch", words, options)).code).toBe(code);
  });
});

describe("batchNumber", () => {
  it("is a place in the log, from 1", () => {
    expect(valueOf(batchNumber("2", sampleKitchen))).toBe(2);
    for (const word of ["0", "3", "-1", "1.5", ""]) {
      expect(problemOf(batchNumber(word, sampleKitchen)).code).toBe("option-invalid");
    }
  });
});

describe("onlyOfBatch", () => {
  it("touches nothing where another batch has taken its number", () => {
    const [first, second] = sampleKitchen.batches;
    const edit = valueOf(batchEdit(["1"], batchShape.parse({ remove: true }), today));
    const meant = editedKitchen(sampleText, file, onlyOfBatch(1, first!, edit));
    expect(valueOf(meant).after.batches).toEqual([second]);
    const other = editedKitchen(sampleText, file, onlyOfBatch(1, second!, edit));
    expect(problemOf(other).code).toBe("kitchen-changed-meanwhile");
  });
});
