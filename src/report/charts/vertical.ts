/** The temperature scale of a plot: from degrees in the drawn unit to px down from its top. */
import type { Stretch } from "./scale-range.ts";

export interface Vertical {
  /** In the drawn unit. */
  readonly domain: Stretch;
  /** px. */
  readonly height: number;
}

/** px from the top; what lies beyond the scale is cut off at its end. */
export const down = ({ domain, height }: Vertical, shown: number): number => {
  const share = (domain.high - shown) / (domain.high - domain.low);
  return Math.min(Math.max(share, 0), 1) * height;
};

export const within = ({ domain }: Vertical, shown: number): boolean =>
  shown > domain.low && shown < domain.high;
