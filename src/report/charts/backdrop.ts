/** What lies behind the readings: windows, guarded band, holding band, edges and ceilings. */
import type { ProbeAnalysis } from "../../analysis.ts";
import type { Requirement } from "../../culture/verdict-types.ts";
import type { TemperatureUnit } from "../../quantity.ts";
import { colour, toScale } from "./chart-theme.ts";
import type { PlotBox, PlotRule } from "./plot.ts";
import type { Stretch } from "./scale-range.ts";
import { down, within } from "./vertical.ts";
import type { Vertical } from "./vertical.ts";
import { windowLook } from "./window-looks.ts";

export const requirementsOf = (probe: ProbeAnalysis): readonly Requirement[] =>
  probe.verdicts.map(({ requirement }) => requirement);

export interface Backdrop {
  readonly probe: ProbeAnalysis;
  readonly unit: TemperatureUnit;
  readonly vertical: Vertical;
  /** Along x, px: the whole panel, and the hold in it. */
  readonly panel: Stretch;
  readonly hold: Stretch;
}

type Look = Pick<PlotBox, "fill" | "opacity" | "stroke">;

const box = (
  { unit, vertical }: Backdrop,
  { low, high }: Stretch,
  along: Stretch,
  { fill, opacity, stroke }: Look,
): PlotBox => ({
  left: along.low,
  right: along.high,
  top: down(vertical, toScale(unit, high)),
  bottom: down(vertical, toScale(unit, low)),
  fill,
  opacity,
  stroke,
});

const guardLook = { fill: colour.guard, opacity: 1, stroke: null };
const bandLook = { fill: colour.band, opacity: 0.34, stroke: colour.band };

/** Windows first, then the guarded band, then the holding band over it. */
export const backdropBoxes = (backdrop: Backdrop): readonly PlotBox[] => {
  const { probe, panel, hold } = backdrop;
  const { guardedBand, night } = probe;
  const windows = requirementsOf(probe).map((asked, at) =>
    box(backdrop, asked, panel, { fill: windowLook(at).fill, opacity: 1, stroke: null }),
  );
  const guard = guardedBand === null ? [] : [box(backdrop, guardedBand, hold, guardLook)];
  const band = night.hold === null ? [] : [box(backdrop, night.hold.band, hold, bandLook)];
  return [...windows, ...guard, ...band];
};

interface Line {
  /** degC. */
  readonly at: number;
  readonly along: Stretch;
  readonly stroke: string;
  readonly width: number;
  readonly dash: readonly number[];
}

/** The guarded band's ends, then the windows' edges and the ceilings, each once. */
const linesOf = ({ probe, panel, hold }: Backdrop): readonly Line[] => {
  const asked = requirementsOf(probe);
  const guard = probe.guardedBand === null ? [] : [probe.guardedBand.low, probe.guardedBand.high];
  const ceilings = new Set(asked.flatMap(({ ceiling }) => (ceiling === null ? [] : [ceiling])));
  const edges = asked.flatMap(({ low, high }, index) =>
    [low, high].map((at) => ({ at, dash: windowLook(index).dash })),
  );
  return [
    ...guard.map((at) => ({ at, along: hold, stroke: colour.band, width: 1, dash: [3, 3] })),
    ...edges.map(({ at, dash }) => ({
      at,
      along: panel,
      stroke: colour.windowEdge,
      width: 1.2,
      dash,
    })),
    ...Array.from(ceilings, (at) => ({
      at,
      along: panel,
      stroke: colour.limit,
      width: 1.6,
      dash: [7, 4],
    })),
  ];
};

export const backdropRules = (backdrop: Backdrop): readonly PlotRule[] => {
  const { unit, vertical } = backdrop;
  return linesOf(backdrop)
    .filter(({ at }) => within(vertical, toScale(unit, at)))
    .map(({ at, along, stroke, width, dash }) => {
      const y = down(vertical, toScale(unit, at));
      return { left: along.low, right: along.high, top: y, bottom: y, stroke, width, dash };
    });
};
