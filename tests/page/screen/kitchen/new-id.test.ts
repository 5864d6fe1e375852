import { describe, expect, it } from "vitest";
import { newId } from "../../../../src/page/screen/kitchen/new-id.ts";

describe("newId", () => {
  it("is the name in plain letters", () => {
    expect(newId("Step cooker", [])).toBe("step-cooker");
  });

  it("takes a number where the name is taken", () => {
    expect(newId("Box", ["box", "box-2"])).toBe("box-3");
  });

  it("is nothing for a name without letters", () => {
    expect(newId(" … ", [])).toBeNull();
  });
});
