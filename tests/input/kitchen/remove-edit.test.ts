import { describe, expect, it } from "vitest";
import { problemOf, tryEdit, valueOf } from "../sample-kitchen.ts";

describe("removeEdit", () => {
  it("takes out what nothing needs, and nothing else", () => {
    const { after } = valueOf(tryEdit("remove", ["appliance", "box"]));
    expect(after.appliances.map(({ id }) => id)).toEqual(["step-cooker", "warm-cooker"]);
    expect(problemOf(tryEdit("remove", ["container", "jars"])).code).toBe("kitchen-in-use");
    expect(problemOf(tryEdit("remove", ["oven", "box"])).code).toBe("option-invalid");
  });
});
