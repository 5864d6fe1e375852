import { expect, it } from "vitest";
import { dark, forced, light } from "../../src/report/style-palette.ts";
import { style } from "../../src/report/style.ts";

const names = (block: string): string[] =>
  [...block.matchAll(/--([a-z-]+):/g)].map(([, name]) => name!);

it("gives every colour for light, for dark and for a reader's own colours", () => {
  expect(names(light).length).toBeGreaterThan(10);
  expect(names(dark)).toEqual(names(light));
  expect(names(forced)).toEqual(names(light));
});

it("forces nothing but system colours (CSS Color 4, section 6.2)", () => {
  const values = [...forced.matchAll(/--[a-z-]+: (\w+);/g)].map(([, value]) => value);
  expect(values.length).toBe(names(light).length);
  expect([...new Set(values)].toSorted()).toEqual([
    "Canvas",
    "CanvasText",
    "GrayText",
    "Highlight",
  ]);
});

it("uses no colour that it does not give", () => {
  const used = new Set([...style.matchAll(/var\(--([a-z-]+)\)/g)].map(([, name]) => name!));
  expect([...used].filter((name) => !names(light).includes(name))).toEqual([]);
});
