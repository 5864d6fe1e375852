import type { ThermometerStatement } from "../thermometer/budget.ts";

/** A thermometer with what tells it from others. */
export interface NamedThermometer {
  /** null: nobody said which; all such are taken for one and the same. */
  readonly thermometerId: string | null;
  readonly thermometer: ThermometerStatement;
}

/** What the thermometers leave open in a figure made from several tests. */
export interface ThermometerDoubt {
  /** All together, degC. */
  readonly standardUncertainty: number;
  /** Half-width where it is a rectangle, of a single thermometer's specification; else null. */
  readonly halfWidth: number | null;
}

/** A test's thermometer, and how much its reading counts in the figure: d figure / d reading. */
export interface SharedThermometer extends NamedThermometer {
  readonly share: number;
}

/**
 * A thermometer is off alike in all its tests, different ones independently:
 * shares of one thermometer add first, then those of all as squares (JCGM
 * 100:2008, 5.1.2 and 5.2.2, correlation 1 within a thermometer, 0 between).
 */
export const thermometerDoubt = (tests: readonly SharedThermometer[]): ThermometerDoubt => {
  const parts = new Map<string | null, { uncertainty: number; halfWidth: number | null }>();
  for (const { thermometerId, thermometer, share } of tests) {
    const { standardUncertainty, accuracy } = thermometer;
    const so = parts.get(thermometerId) ?? { uncertainty: 0, halfWidth: 0 };
    const rectangle = so.halfWidth === null || accuracy === null;
    parts.set(thermometerId, {
      uncertainty: so.uncertainty + share * standardUncertainty,
      halfWidth: rectangle ? null : so.halfWidth! + share * accuracy,
    });
  }
  const all = [...parts.values()];
  const [only] = all;
  return {
    standardUncertainty: Math.hypot(...all.map(({ uncertainty }) => uncertainty)),
    halfWidth: all.length === 1 && only!.halfWidth !== null ? Math.abs(only!.halfWidth) : null,
  };
};
