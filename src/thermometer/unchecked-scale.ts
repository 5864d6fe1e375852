import { rectangularUncertainty } from "./budget.ts";
import type { CorrectionComponent } from "./correction-model.ts";

/**
 * Standard uncertainty of a scale nobody checked, per degC away from the check:
 * half a degree in 100, assumed of digital kitchen thermometers and simple
 * loggers (common practice, no source).
 */
export const assumedScaleDoubt = 0.005;

/**
 * A check speaks for its neighbourhood: nothing is added within 5 degC of one
 * (the example of JCGM 100, H.3, adds nothing 3.5 degC beyond its last point).
 */
const neighbourhood = 5;

/** Half-width of what lies between checks and a straight line, assumed (no source), and where it is full. */
const mostBend = 0.1;
const fullBendAt = 10;

/**
 * For one known offset: the scale away from `reading`, where it was found. With
 * a specification of +-`accuracy` in force, no more than that leaves open.
 */
export const uncheckedScale = (reading: number, accuracy: number | null): CorrectionComponent => ({
  source: "unchecked scale",
  shape: "distance",
  checked: [reading],
  to: "nearest",
  free: 0,
  perDegree: assumedScaleDoubt,
  most: accuracy === null ? null : rectangularUncertainty(accuracy),
  degreesOfFreedom: Infinity,
  from: "assumed",
});

/**
 * For a line through checks at `readings`: between them a thermometer may bend
 * away from the line, by a rectangular half-width that grows to 0.1 degC from 5
 * to 10 degC away from the nearest check; beyond them the scale is unchecked.
 */
export const departuresFromLine = (readings: readonly number[]): readonly CorrectionComponent[] => [
  {
    source: "linearity",
    shape: "distance",
    checked: readings,
    to: "nearest",
    free: neighbourhood,
    perDegree: rectangularUncertainty(mostBend / (fullBendAt - neighbourhood)),
    most: rectangularUncertainty(mostBend),
    degreesOfFreedom: Infinity,
    from: "assumed",
  },
  {
    source: "unchecked scale",
    shape: "distance",
    checked: readings,
    to: "range",
    free: neighbourhood,
    perDegree: assumedScaleDoubt,
    most: null,
    degreesOfFreedom: Infinity,
    from: "assumed",
  },
];
