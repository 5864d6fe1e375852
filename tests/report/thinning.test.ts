import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { thin } from "../../src/report/thinning.ts";

const even = (count: number, stepMinutes: number): Float64Array =>
  Float64Array.from({ length: count }, (_, index) => index * stepMinutes);

describe("thin", () => {
  it("keeps everything where there is little", () => {
    const minutes = even(8, 60);
    const kept = thin(minutes, Float64Array.of(1, 2, 3, 4, 5, 6, 7, 8), 240);
    expect([...kept.indices]).toEqual([0, 1, 2, 3, 4, 5, 6, 7]);
    expect(kept.breaks.size).toBe(0);
  });

  it("brings a million readings to about 1,500 with every single-reading spike kept", () => {
    const minutes = even(1_000_000, 1 / 60);
    const values = minutes.map((minute) => 40 + Math.sin(minute / 9));
    const spikes = [17, 123_456, 500_001, 999_998];
    for (const [at, index] of spikes.entries()) values[index] = at % 2 === 0 ? 60 : 10;
    const { indices } = thin(minutes, values, 10);
    expect(indices.length).toBeLessThanOrEqual(1504);
    expect(indices.length).toBeGreaterThan(1300);
    for (const index of spikes) expect(indices).toContain(index);
  });

  it("breaks the line at a gap that can be seen, keeping both its sides", () => {
    const minutes = Float64Array.from(
      { length: 600 },
      (_, index) => index + (index >= 300 ? 40 : 0),
    );
    const kept = thin(minutes, minutes.map(Math.sin), 4, 50);
    expect([...kept.breaks]).toEqual([299]);
    expect(kept.indices).toContain(299);
    expect(kept.indices).toContain(300);
  });

  it("draws on over gaps narrower than a slot, so that many gaps cannot swell the drawing", () => {
    const minutes = Float64Array.from(
      { length: 60_000 },
      (_, index) => index + Math.floor(index / 10) * 12,
    );
    const kept = thin(minutes, minutes.map(Math.sin), 4, 100);
    expect(kept.breaks.size).toBe(0);
    expect(kept.indices.length).toBeLessThanOrEqual(204);
  });

  it("keeps first, last, lowest and highest of any series, in order", () => {
    const steps = fc.array(
      fc.record({ step: fc.double({ min: 0.01, max: 30, noNaN: true }), value: fc.integer() }),
      { minLength: 1, maxLength: 400 },
    );
    fc.assert(
      fc.property(steps, fc.integer({ min: 1, max: 60 }), (rows, slots) => {
        let minute = 0;
        const minutes = Float64Array.from(rows, ({ step }) => (minute += step));
        const values = Float64Array.from(rows, ({ value }) => value);
        const indices = [...thin(minutes, values, 10, slots).indices];
        expect(indices[0]).toBe(0);
        expect(indices.at(-1)).toBe(rows.length - 1);
        expect(indices).toEqual([...new Set(indices)].toSorted((a, b) => a - b));
        const drawn = indices.map((index) => values[index]!);
        expect(Math.max(...drawn)).toBe(values.reduce((a, b) => Math.max(a, b)));
        expect(Math.min(...drawn)).toBe(values.reduce((a, b) => Math.min(a, b)));
      }),
    );
  });

  it("takes an empty series", () => {
    expect(thin(new Float64Array(), new Float64Array(), 1).indices.length).toBe(0);
  });
});
