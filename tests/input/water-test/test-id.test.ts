import { describe, expect, it } from "vitest";
import { slug, testId } from "../../../src/input/water-test/test-id.ts";

const parts = {
  appliance: "step-cooker",
  setting: "38",
  container: "jars",
  startedAt: Date.UTC(2026, 9, 3, 22, 10),
};

describe("testId", () => {
  it("is made from appliance, setting, container and day", () => {
    expect(testId(parts, new Set())).toBe("step-cooker-38-jars-2026-10-03");
  });

  it("leaves out a setting and a day that are not known", () => {
    expect(testId({ ...parts, setting: null, startedAt: null }, new Set())).toBe(
      "step-cooker-jars",
    );
    // A file with clock times only stands on the first of January 1970.
    expect(testId({ ...parts, startedAt: 79_800_000 }, new Set())).toBe("step-cooker-38-jars");
  });

  it("counts on where a name is taken", () => {
    const taken = new Set(["step-cooker-38-jars-2026-10-03", "step-cooker-38-jars-2026-10-03-2"]);
    expect(testId(parts, taken)).toBe("step-cooker-38-jars-2026-10-03-3");
  });
});

describe("slug", () => {
  it.each([
    ["Warm program", "warm-program"],
    ["37.5C", "37.5c"],
    ["  High / low! ", "high-low"],
    ["Crème fraîche", "creme-fraiche"],
    ["日本", "日本"],
    ["🍶", ""],
  ])("writes %j as %j", (text, expected) => {
    expect(slug(text)).toBe(expected);
  });
});
