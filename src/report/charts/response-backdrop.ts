/** Windows of the cultures behind an appliance's response, named at the left edge. */
import type { Requirement } from "../../culture/verdict-types.ts";
import type { TemperatureUnit } from "../../quantity.ts";
import { windowMark } from "../wording/cultures.ts";
import { colour, textSize, toScale } from "./chart-theme.ts";
import { placeLevels } from "./level-labels.ts";
import type { Plot } from "./plot.ts";
import { cutName } from "./response-names.ts";
import { down, within } from "./vertical.ts";
import type { Vertical } from "./vertical.ts";
import { windowLook } from "./window-looks.ts";

interface Backdrop {
  readonly requirements: readonly Requirement[];
  readonly unit: TemperatureUnit;
  readonly vertical: Vertical;
  readonly width: number;
}

/** A name longer than this is cut: it must not run over the axis; the text has it whole. */
const mostLetters = (width: number): number => Math.floor(width / (0.8 * textSize));

export const responseBackdrop = ({
  requirements,
  unit,
  vertical,
  width,
}: Backdrop): Pick<Plot, "boxes" | "rules" | "texts"> => {
  const y = (celsius: number): number => down(vertical, toScale(unit, celsius));
  const levels = requirements.map((asked) => ({
    text: cutName(windowMark(asked), mostLetters(width)),
    top: y(asked.high),
    bottom: y(asked.low),
  }));
  const surroundings = { readings: null, plotHeight: vertical.height, textSize };
  return {
    boxes: levels.map(({ top, bottom }) => ({
      left: 0,
      right: width,
      top,
      bottom,
      fill: colour.window,
      // Where windows overlap they darken; hatching would drown the lines before them.
      opacity: 0.6,
      stroke: null,
    })),
    rules: requirements.flatMap(({ low, high }, at) =>
      [low, high]
        .filter((edge) => within(vertical, toScale(unit, edge)))
        .map((edge) => ({
          left: 0,
          right: width,
          top: y(edge),
          bottom: y(edge),
          stroke: colour.windowEdge,
          width: 1.2,
          dash: windowLook(at).dash,
        })),
    ),
    texts: placeLevels(levels, surroundings).map((level) => ({
      x: 5,
      y: level.y,
      text: level.text,
      align: "left",
      fill: colour.ink,
      halo: colour.paper,
    })),
  };
};
