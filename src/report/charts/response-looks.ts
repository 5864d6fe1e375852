/** How the containers of one chart look: they differ by dash, shape and colour, and their names stand in it. */
import { colour } from "./chart-theme.ts";

export interface ContainerLook {
  readonly stroke: string;
  readonly dash: readonly number[];
  readonly shape: string;
}

const looks: readonly ContainerLook[] = [
  { stroke: colour.line, dash: [1, 0], shape: "circle" },
  { stroke: colour.band, dash: [7, 3], shape: "diamond" },
  { stroke: colour.context, dash: [2, 3], shape: "triangle-up" },
  { stroke: colour.limit, dash: [9, 3, 2, 3], shape: "square" },
];

/** A fifth looks like the first again. */
export const containerLook = (at: number): ContainerLook => looks[at % looks.length]!;

/** Of the 95 % corridor; three of them may lie over each other. */
export const corridorOpacity = 0.15;
