/** Time below, inside and above the window as one strip. */
import type { DwellTimes } from "../../hold/dwell.ts";
import { baseConfig, colour } from "./chart-theme.ts";
import type { Size, Spec } from "./chart-theme.ts";

export interface DwellParts {
  readonly below: number;
  readonly inside: number;
  readonly above: number;
}

/** Minutes of the tested hold; `inside` is what is neither below nor above. */
export const dwellParts = (dwell: DwellTimes, holdHours: number): DwellParts => ({
  below: dwell.belowMinutes,
  inside: Math.max(holdHours * 60 - dwell.belowMinutes - dwell.aboveMinutes, 0),
  above: dwell.aboveMinutes,
});

const height = 26;

const outside: Spec = {
  color: colour.limit,
  fillOpacity: 0.3,
  stroke: colour.limit,
  strokeWidth: 1.4,
};

/** Inside is solid; below and above are pale with an outline, dashed below, so grey print tells them apart. */
export const dwellSpec = (parts: DwellParts, size: Size): Spec => {
  const total = parts.below + parts.inside + parts.above || 1;
  const piece = (from: number, length: number, mark: Spec): Spec => ({
    data: { values: length > 0 ? [{ from, to: from + length }] : [] },
    mark: { type: "rect", ...mark },
    encoding: {
      x: {
        field: "from",
        type: "quantitative",
        scale: { domain: [0, total], nice: false },
        axis: null,
      },
      x2: { field: "to" },
      y: { value: 0 },
      y2: { value: height },
    },
  });
  return {
    width: size.width - 8,
    height,
    config: baseConfig(size),
    layer: [
      piece(0, parts.below, { ...outside, strokeDash: [3, 2] }),
      piece(parts.below, parts.inside, { color: colour.line, stroke: colour.line }),
      piece(parts.below + parts.inside, parts.above, outside),
    ],
  };
};
