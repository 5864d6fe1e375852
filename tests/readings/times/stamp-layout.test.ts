import { describe, expect, it } from "vitest";
import { layoutOf } from "../../../src/readings/times/stamp-layout.ts";

describe("layoutOf", () => {
  // Places are counted by hand in the shape, from 0.
  it.each([
    ["Y-d-d d:d:d", { date: "known", year: 0, month: 2, day: 4, hour: 6, minute: 8, second: 10 }],
    [
      "d/d/Y d:d a",
      { date: "open", month: 0, day: 2, year: 4, hour: 6, minute: 8, half: 10, twoPart: true },
    ],
    ["d.d.Y d.d.d", { date: "open", dotted: true, hour: 6, minute: 8, second: 10, twoPart: false }],
    ["d M Y d:d", { date: "known", named: true, day: 0, month: 2, year: 4, hour: 6 }],
    ["M d, Y d:d", { date: "known", named: true, month: 0, day: 2, year: 5, hour: 7 }],
    ["M, d M Y d:d", { date: "known", day: 3, month: 5, year: 7 }],
    ["BTHZ", { date: "known", compactDate: 0, compactTime: 2, zulu: 3 }],
    ["Y-d-dTd:d:d.t+d:d", { fraction: 12, offsetSign: 13, offsetHour: 14, offsetMinute: 16 }],
    ["Y-d-d d:d Z-Y", { zulu: 10, offsetSign: 11, compactOffset: 12 }],
    ["d:d:d", { date: "none", hour: 0, minute: 2, second: 4, days: -1 }],
    ["dD d:d:d", { date: "none", days: 0, hour: 3 }],
    ["d.d:d:d", { date: "none", days: 0, hour: 2 }],
    ["t:d.d", { date: "none", hour: -1, minute: 0, second: 2, fraction: 4 }],
    ["d-d-d", { date: "open", hour: -1 }],
  ])("%s", (shape, expected) => expect(layoutOf(shape)).toMatchObject(expected));

  it.each(["d", "d.d", "Y", "d-d", "d/d.d", "d:d:d:d:d", "M", "a", "z", "Y-d-d d"])(
    "%s is no stamp's",
    (shape) => expect(layoutOf(shape)).toBeNull(),
  );
});
