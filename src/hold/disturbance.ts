import type { Points } from "./grid.ts";
import type { PhaseCause } from "./hold.ts";

/** Something that broke into the hold; indices are inclusive. */
export interface Disturbance {
  readonly first: number;
  readonly last: number;
  /** First point clearly below the hold. */
  readonly clear: number;
  /** Left out where there is none with a name. */
  readonly cause?: PhaseCause;
  /** True where it runs to the end of the readings without recovering: the hold ended there. */
  readonly final: boolean;
}

/** One flag for each point: 1 inside a disturbance. */
export const marked = (points: Points, disturbances: readonly Disturbance[]): Uint8Array => {
  const flags = new Uint8Array(points.minutes.length);
  for (const { first, last } of disturbances) flags.fill(1, first, last + 1);
  return flags;
};
