/** Time below, inside and above the window as one strip. */
import type { DwellTimes } from "../../hold/dwell.ts";
import { colour } from "./chart-theme.ts";
import type { Caption } from "./chart-theme.ts";
import { percentOf, stretchedImage } from "./image.ts";

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

const height = 28;

const outside = `fill="${colour.limit}" fill-opacity="0.3" stroke="${colour.limit}" stroke-width="1.4"`;

/** Inside is solid; below and above are pale with an outline, dashed below, so grey print tells them apart. */
const looks: Readonly<Record<keyof DwellParts, string>> = {
  below: `${outside} stroke-dasharray="3 2"`,
  inside: `fill="${colour.line}" stroke="${colour.line}" stroke-width="1.4"`,
  above: outside,
};

export const dwellImage = (parts: DwellParts, caption: Caption): string => {
  const total = parts.below + parts.inside + parts.above || 1;
  let from = 0;
  const pieces = (["below", "inside", "above"] as const).map((part) => {
    const start = from;
    from += parts[part];
    const place = `x="${percentOf(start / total)}" width="${percentOf(parts[part] / total)}"`;
    return parts[part] > 0 ? `<rect ${place} y="1" height="${height - 2}" ${looks[part]}/>` : "";
  });
  return stretchedImage(caption, height, pieces.join(""));
};
