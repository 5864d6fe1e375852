/**
 * How the first, second and third window of one chart look: they differ by
 * hatching and by dash, so that grey print and colour-blind eyes part them.
 */
import { colour } from "./chart-theme.ts";

export interface WindowLook {
  readonly fill: string;
  readonly dash: readonly number[];
}

export type Hatch = "rising" | "falling";

/** A mark only: finish-svg.ts draws the hatching in its place. */
const hatched = (hatch: Hatch): string => `url(#${hatch})`;

const looks: readonly WindowLook[] = [
  { fill: colour.window, dash: [1, 0] },
  { fill: hatched("rising"), dash: [5, 3] },
  { fill: hatched("falling"), dash: [2, 2] },
];

/** A fourth window looks like the first again; their names stand in them. */
export const windowLook = (at: number): WindowLook => looks[at % looks.length]!;

/** Where a hatched box lies, px. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** Lines 1 px thick, 8 px from one to the next along the box; at 45 degrees a line is 1.41 px across. */
const dashes = "1.41 6.59";
const slants: Readonly<Record<Hatch, -1 | 1>> = { rising: -1, falling: 1 };

const hundredths = (px: number): number => Number(px.toFixed(2));

/**
 * Slanted lines over a box: one line as thick as the box is high, dashed along
 * its length, slanted, and cut off at the box's ends. Not an SVG pattern, which
 * browsers print as an image of coarse pixels.
 *
 * @param clip id of the shape that cuts; no other of the page may have it
 */
export const hatchLines = (hatch: Hatch, box: Box, clip: string): string => {
  const { left, top, width, height } = box;
  if (width <= 0 || height <= 0) return "";
  const slant = slants[hatch];
  const middle = hundredths(top + height / 2);
  const place = `translate(${hundredths(left - slant * middle)},0) skewX(${slant * 45})`;
  return (
    `<clipPath id="${clip}"><path d="M${left},${top}h${width}v${height}h${-width}Z"/></clipPath>` +
    `<g clip-path="url(#${clip})"><path transform="${place}" d="M${-height},${middle}H${hundredths(width + height)}" ` +
    `stroke="${colour.windowEdge}" stroke-opacity="0.55" stroke-width="${height}" stroke-dasharray="${dashes}"/></g>`
  );
};
