import { expect, it } from "vitest";
import { hatchLines, windowLook } from "../../../src/report/charts/window-looks.ts";

it("tells three windows apart without colour: by fill and by dash", () => {
  const looks = [0, 1, 2].map(windowLook);
  expect(new Set(looks.map(({ fill }) => fill)).size).toBe(3);
  expect(new Set(looks.map(({ dash }) => String(dash))).size).toBe(3);
  expect(windowLook(3)).toEqual(windowLook(0));
});

const box = { left: 10, top: 20, width: 100, height: 40 };

it("hatches a box in the page's own colour, cut off where the box ends", () => {
  const lines = hatchLines("rising", box, "a");
  expect(lines).toContain('<clipPath id="a"><path d="M10,20h100v40h-100Z"/></clipPath>');
  expect(lines).toContain('<g clip-path="url(#a)">');
  expect(lines).toContain('stroke="var(--window-edge)"');
  expect(lines).toContain('stroke-width="40"');
  expect(hatchLines("falling", box, "a")).not.toBe(lines);
});

it.each(["rising", "falling"] as const)("covers all of the box: %s", (hatch) => {
  const found = /translate\((.+),0\) skewX\((.+)\)" d="M(.+),(.+)H(.+)" stroke=/.exec(
    hatchLines(hatch, box, "a"),
  )!;
  const [moved, degrees, from, middle, to] = found.slice(1).map(Number) as [
    number,
    number,
    number,
    number,
    number,
  ];
  expect(middle).toBe(40);
  // skewX puts a point x, y at x + y tan(angle) (SVG 2, 8.5).
  for (const y of [box.top, box.top + box.height]) {
    const shift = moved + y * Math.tan((degrees * Math.PI) / 180);
    expect(from + shift).toBeLessThanOrEqual(box.left);
    expect(to + shift).toBeGreaterThanOrEqual(box.left + box.width);
  }
});

it("draws nothing in a box without height or width", () => {
  expect(hatchLines("rising", { ...box, height: 0 }, "a")).toBe("");
  expect(hatchLines("rising", { ...box, width: 0 }, "a")).toBe("");
});
