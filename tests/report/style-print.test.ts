import { expect, it } from "vitest";
import { light } from "../../src/report/style-palette.ts";
import { print } from "../../src/report/style-print.ts";
import { style } from "../../src/report/style.ts";

it("comes last, so that it overrides what screens need", () => {
  expect(style.endsWith(print)).toBe(true);
  expect(print).toContain(light);
});

// What a browser makes of it is seen in print.test.ts.
it("opens what is folded and keeps together what fits a sheet", () => {
  expect(print).toContain("details::details-content");
  for (const part of ["figure", "table", "tr", ".answer", ".by-appliance > li"]) {
    expect(
      /([^;{}]*)\{ break-inside: avoid; \}/
        .exec(print)![1]!
        .split(/,\s*/)
        .map((one) => one.replace(/^[\s\S]*\*\/\s*/, "").trim()),
    ).toContain(part);
  }
});
