import { expect, it } from "vitest";
import { markup } from "../../src/report/markup.ts";
import { wholeDates } from "../../src/report/whole-dates.ts";

const htmlOf = (text: string): string => markup`${wholeDates(text)}`.html;

it("keeps a date whole and every letter as it was", () => {
  expect(htmlOf("begun 2026-03-14 21:37 & on")).toBe(
    'begun <span class="day">2026-03-14</span> 21:37 &amp; on',
  );
});

it("lets a long name that ends in a date break", () => {
  expect(htmlOf("box-3-rack-2026-03-14, 2026-03-15")).toBe(
    'box-3-rack-2026-03-14, <span class="day">2026-03-15</span>',
  );
});
