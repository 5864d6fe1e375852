import { expect, it } from "vitest";
import { down, within } from "../../../src/report/charts/vertical.ts";

const vertical = { domain: { low: 20, high: 45 }, height: 250 };

it("counts px down from the warmest, and stops at the ends", () => {
  expect(down(vertical, 45)).toBe(0);
  expect(down(vertical, 40)).toBe(50);
  expect(down(vertical, 20)).toBe(250);
  expect(down(vertical, 60)).toBe(0);
  expect(down(vertical, -5)).toBe(250);
});

it("knows what lies on the scale", () => {
  expect([20, 20.1, 45].map((value) => within(vertical, value))).toEqual([false, true, false]);
});
