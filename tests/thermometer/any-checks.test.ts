import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { correctionAt } from "../../src/thermometer/correction-at.ts";
import { thermometerModel } from "../../src/thermometer/thermometer-model.ts";
import type { ThermometerCheck } from "../../src/thermometer/thermometer.ts";

describe("thermometerModel of whatever was written down", () => {
  const reading = fc.oneof(
    fc.double({ min: -60, max: 250, noNaN: true }),
    fc.constantFrom(0, 0.2, 32, 38, 99.9, 212),
  );
  const common = {
    readings: fc.array(reading, { maxLength: 4 }),
    date: fc.constant(null),
    confirmed: fc.boolean(),
  };
  const altitude = fc.option(fc.double({ min: -900, max: 9000, noNaN: true }));
  const pressure = fc.option(
    fc.record({
      hectopascal: fc.double({ min: 0, max: 2000, noNaN: true }),
      reduced: fc.constantFrom("station" as const, "sea-level" as const),
    }),
  );
  const check: fc.Arbitrary<ThermometerCheck> = fc.oneof(
    fc.record({ kind: fc.constant("ice" as const), ...common }),
    fc.record({
      kind: fc.constant("boiling" as const),
      place: fc.record({ altitude, pressure }),
      ...common,
    }),
    fc.record({
      kind: fc.constant("reference" as const),
      truth: reading,
      truthUncertainty: fc.option(fc.double({ min: 0, max: 2, noNaN: true })),
      ...common,
    }),
  );

  it("gives finite figures, and uses no check that it says is left out", () => {
    const size = fc.option(fc.double({ min: 0, max: 5, noNaN: true }));
    fc.assert(
      fc.property(fc.array(check, { maxLength: 6 }), size, size, (checks, accuracy, resolution) => {
        const { model, questions, used } = thermometerModel({ checks, accuracy, resolution });
        for (const at of [-20, 0, 38, 90, 120]) {
          const { correction, standardUncertainty, expanded } = correctionAt(model, at);
          expect(Number.isFinite(correction)).toBe(true);
          expect(standardUncertainty).toBeGreaterThanOrEqual(0);
          expect(Number.isFinite(expanded)).toBe(true);
        }
        for (const question of questions)
          if (question.leftOut) expect(used).not.toContain(question.check);
        for (const index of used) expect(checks[index]!.readings.length).toBeGreaterThan(0);
        expect(model.from === "measured").toBe(used.length > 0);
      }),
      { numRuns: 1000 },
    );
  });
});
