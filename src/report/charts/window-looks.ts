/**
 * How the first, second and third window of one chart look: they differ by
 * hatching and by dash, so that grey print and colour-blind eyes part them.
 */
import { colour } from "./chart-theme.ts";

export interface WindowLook {
  readonly fill: string;
  readonly dash: readonly number[];
}

export const hatches = ["rising", "falling"] as const;
export type Hatch = (typeof hatches)[number];

/** A paint of the SVG's own; finish-svg.ts defines it where it is used. */
const hatched = (hatch: Hatch): string => `url(#${hatch})`;

const looks: readonly WindowLook[] = [
  { fill: colour.window, dash: [1, 0] },
  { fill: hatched("rising"), dash: [5, 3] },
  { fill: hatched("falling"), dash: [2, 2] },
];

/** A fourth window looks like the first again; their names stand in them. */
export const windowLook = (at: number): WindowLook => looks[at % looks.length]!;

const strokes: Readonly<Record<Hatch, string>> = {
  rising: "M-1 1L1 -1M0 8L8 0M7 9L9 7",
  falling: "M-1 7L1 9M0 0L8 8M7 -1L9 1",
};

/** The pattern's definition under an id of the page. */
export const hatchPattern = (hatch: Hatch, id: string): string =>
  `<pattern id="${id}" width="8" height="8" patternUnits="userSpaceOnUse">` +
  `<path d="${strokes[hatch]}" fill="none" stroke="${colour.windowEdge}" stroke-width="1" stroke-opacity="0.75"/></pattern>`;
