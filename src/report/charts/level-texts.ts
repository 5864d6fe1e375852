/** Windows and ceilings named where they are drawn, so that nobody must look them up in a key. */
import { short } from "../number-format.ts";
import { windowMark } from "../wording/cultures.ts";
import { requirementsOf } from "./backdrop.ts";
import type { Backdrop } from "./backdrop.ts";
import { colour, signOf, textSize, toScale } from "./chart-theme.ts";
import { placeLevels } from "./level-labels.ts";
import type { Level } from "./level-labels.ts";
import type { PlotText } from "./plot.ts";
import { down, within } from "./vertical.ts";

const besideEdge = 5;

const ceilings = ({ probe, unit, vertical }: Backdrop): readonly Level[] => {
  const asked = requirementsOf(probe).flatMap(({ ceiling }) => (ceiling === null ? [] : [ceiling]));
  return [...new Set(asked)].flatMap((ceiling) => {
    const at = toScale(unit, ceiling);
    const y = down(vertical, at);
    const text = `never above ${short(at, 1)}\u00a0${signOf(unit)}`;
    return within(vertical, at) ? [{ text, top: y, bottom: y }] : [];
  });
};

const windows = ({ probe, unit, vertical }: Backdrop): readonly Level[] =>
  requirementsOf(probe).flatMap((asked) => {
    const top = down(vertical, toScale(unit, asked.high));
    const bottom = down(vertical, toScale(unit, asked.low));
    return bottom > top ? [{ text: windowMark(asked), top, bottom }] : [];
  });

export const levelTexts = (backdrop: Backdrop): readonly PlotText[] => {
  const { probe, unit, vertical, panel } = backdrop;
  const { hold } = probe.night;
  const readings =
    hold === null
      ? null
      : {
          low: down(vertical, toScale(unit, hold.max)),
          high: down(vertical, toScale(unit, hold.min)),
        };
  const surroundings = { readings, plotHeight: vertical.height, textSize };
  return placeLevels([...ceilings(backdrop), ...windows(backdrop)], surroundings).map(
    ({ text, y }) => ({
      x: panel.high - besideEdge,
      y,
      text,
      align: "right",
      fill: text.startsWith("never above") ? colour.limit : colour.ink,
      halo: colour.paper,
    }),
  );
};
