/** A thermometer as the person describes it. Temperatures in degC. */
export interface Thermometer {
  /** Step of its display; null where nobody said. */
  readonly resolution: number | null;
  /** Half-width of its maker's +-A specification; null where nobody said. */
  readonly accuracy: number | null;
  readonly checks: readonly ThermometerCheck[];
}

/** One check: readings taken one after the other in the same state, degC. */
export type ThermometerCheck = CheckFacts &
  (
    | { readonly kind: "ice" }
    | { readonly kind: "boiling"; readonly place: BoilingPlace }
    | {
        readonly kind: "reference";
        /** What the reference thermometer showed, its own correction applied. */
        readonly truth: number;
        /** Standard uncertainty of that; null where nobody said. */
        readonly truthUncertainty: number | null;
      }
  );

interface CheckFacts {
  readonly readings: readonly number[];
  /** ISO date of the check; null where nobody said. */
  readonly date: string | null;
  /** The person has looked at a doubtful check again and stands by it. */
  readonly confirmed: boolean;
}

/** Where water was boiled. Altitude, or pressure, or a sea-level pressure with the altitude. */
export interface BoilingPlace {
  /** Metres above sea level. */
  readonly altitude: number | null;
  readonly pressure: {
    readonly hectopascal: number;
    /** As read on the spot, or reduced to sea level as weather services give it. */
    readonly reduced: "station" | "sea-level";
  } | null;
}
