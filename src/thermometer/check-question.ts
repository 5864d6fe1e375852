/** What looks wrong in a thermometer's check; the wording lives in report/. Temperatures in degC. */
export type CheckQuestion = {
  /** Index into the thermometer's checks. */
  readonly check: number;
  /** Whether the check is left out of the correction until the person confirms it. */
  readonly leftOut: boolean;
} & (
  | { readonly code: "ice-too-warm"; readonly reading: number }
  | { readonly code: "ice-too-cold"; readonly reading: number }
  /** The number fits the other scale: 32 for ice, 212 for boiling. */
  | { readonly code: "looks-like-fahrenheit"; readonly reading: number }
  /** `altitude`: where water would boil at that reading, metres; null beyond 5,000 m. */
  | {
      readonly code: "boiling-too-cold";
      readonly reading: number;
      readonly expected: number;
      readonly altitude: number | null;
    }
  /** Above the boiling point: the probe touched the bottom of the pot, or the place is wrong. */
  | { readonly code: "boiling-too-hot"; readonly reading: number; readonly expected: number }
  | { readonly code: "boiling-place-unknown" }
  | { readonly code: "reference-far-off"; readonly reading: number; readonly truth: number }
  /** Readings of one check spread more than a settled thermometer does. */
  | { readonly code: "not-settled"; readonly spread: number }
  /** Two checks cannot both be right: the scale itself would be off by `perHundred` degC in 100. */
  | { readonly code: "scale-off"; readonly perHundred: number }
);
