import { describe, expect, it } from "vitest";
import { extremes } from "../../src/hold/extremes.ts";
import { pointsOf, rampNight } from "./constructed.ts";

describe("extremes", () => {
  it("are the coldest and the warmest of a night", () => {
    expect(extremes(pointsOf(rampNight, { until: 720 }))).toEqual([20, 41]);
  });

  it("leave out ten minutes of steam and a stray cold reading", () => {
    const steam = pointsOf((m) => (m > 200 && m < 211 ? 56 : m === 400 ? -5 : 27), { until: 720 });
    expect(extremes(steam)).toEqual([27, 27]);
  });

  it("are the readings' own for one reading", () => {
    expect(extremes(pointsOf(() => 30, { until: 0 }))).toEqual([30, 30]);
  });
});
