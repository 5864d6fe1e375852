import { describe, expect, it } from "vitest";
import { problemOf, tryEdit, typed, valueOf } from "../sample-kitchen.ts";

describe("renameEdit", () => {
  it("gives another name, everywhere where that was said", () => {
    const words = ["appliance", "step-cooker", "big-cooker"];
    expect(problemOf(tryEdit("rename", words)).code).toBe("kitchen-in-use");
    const { after } = valueOf(tryEdit("rename", words, typed(["everywhere"])));
    expect(after.appliances[0]?.id).toBe("big-cooker");
    expect(after.batches[0]?.appliance).toBe("big-cooker");
  });

  it("fails at a section or a name that is not there", () => {
    expect(problemOf(tryEdit("rename", ["oven", "a", "b"])).code).toBe("option-invalid");
    expect(problemOf(tryEdit("rename", ["container", "a", "b"])).code).toBe("id-unknown");
  });
});
