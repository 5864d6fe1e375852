import { expect, it } from "vitest";
import { hatches, hatchPattern, windowLook } from "../../../src/report/charts/window-looks.ts";

it("tells three windows apart without colour: by fill and by dash", () => {
  const looks = [0, 1, 2].map(windowLook);
  expect(new Set(looks.map(({ fill }) => fill)).size).toBe(3);
  expect(new Set(looks.map(({ dash }) => String(dash))).size).toBe(3);
  expect(windowLook(3)).toEqual(windowLook(0));
});

it("defines each hatching under the id it is given, with the page's own colour", () => {
  for (const hatch of hatches) {
    const pattern = hatchPattern(hatch, `a-${hatch}`);
    expect(pattern).toContain(`<pattern id="a-${hatch}"`);
    expect(pattern).toContain("var(--window-edge)");
  }
  expect(hatchPattern("rising", "a")).not.toBe(hatchPattern("falling", "a"));
});
