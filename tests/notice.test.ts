import { describe, expect, it } from "vitest";
import { notice, noticeText } from "../src/notice.ts";
import type { Notice, NoticeCode, NoticeFacts } from "../src/notice.ts";

/** Constructed facts, one set for each code; the compiler asks for every code. */
const samples: { readonly [Code in NoticeCode]: NoticeFacts[Code] } = {
  "unit-inferred": { unit: "degF", middle: 100.4 },
  "date-order-decided": { order: "day first", why: "line 30 has a day of 14" },
  "clock-jump-mended": { line: 512, jumpMinutes: 60 },
  "rows-reordered": { count: 3, firstLine: 12 },
  "stamps-spread": { perStamp: 6, seconds: 10 },
  "probes-split": { column: "Sensor", names: "jar, bath" },
  "probes-from-start": { column: "Sensor", names: "jar, bath" },
  "time-decided": { found: "26:30", reading: "hours and minutes", why: "they rise to the end" },
  "columns-moved": { line: 300 },
  "year-unknown": { found: "11/25 22:30" },
  gap: { firstLine: 40, minutes: 35, count: 2 },
  "preamble-skipped": { lines: 4 },
  "columns-ignored": { columns: "Humidity, Battery" },
  "interval-applied": { seconds: 5 },
  "probes-named": { names: "probe 1, probe 2" },
  "assumed-thermometer": { accuracy: 1 },
  "thermometer-unchecked": { thermometer: "Second logger", accuracy: 0.5, from: "stated" },
  "check-left-out": { thermometer: "Pen", check: "melting ice, 2026-02-14" },
  "check-old": { thermometer: "Pen", months: 14 },
  "probes-without-thermometer": { probes: '"Jar", "Bath"', accuracy: 1 },
};

const notices = Object.entries(samples).map(([code, facts]) => ({ code, facts }) as Notice);

const within = (accuracy: number): string => `+-${accuracy} of some unit`;

describe("noticeText", () => {
  it.each(notices)("$code is a whole sentence with its facts", (item) => {
    const text = noticeText(item, within);
    expect(text).toMatch(/\.$/);
    expect(text).not.toMatch(/undefined|null|NaN|\[object|\s{2}/);
    for (const fact of Object.values(item.facts)) expect(text).toContain(String(fact));
  });

  it("leaves the unit of an accuracy to whoever writes for the reader", () => {
    const told = notices.filter(({ facts }) => "accuracy" in facts);
    expect(told.length).toBeGreaterThan(2);
    for (const item of told) expect(noticeText(item, within)).toContain("of some unit");
  });

  it("counts one as one", () => {
    expect(noticeText(notice("rows-reordered", { count: 1, firstLine: 12 }), within)).toMatch(
      /^1 row was /,
    );
    expect(noticeText(notice("rows-reordered", { count: 2, firstLine: 12 }), within)).toMatch(
      /^2 rows were /,
    );
    expect(noticeText(notice("preamble-skipped", { lines: 1 }), within)).toMatch(/^1 line .* was /);
  });
});
