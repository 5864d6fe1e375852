/** What lies behind the readings: windows, guarded band, holding band, edges and ceilings. */
import type { ProbeAnalysis } from "../../analysis.ts";
import type { Requirement } from "../../culture/verdict-types.ts";
import type { TemperatureUnit } from "../../quantity.ts";
import { colour, toScale } from "./chart-theme.ts";
import type { Spec } from "./chart-theme.ts";
import type { Stretch } from "./scale-range.ts";
import { boxLayer, ruleLayer } from "./styled-marks.ts";
import type { Box, Rule } from "./styled-marks.ts";

export const requirementsOf = (probe: ProbeAnalysis): readonly Requirement[] =>
  probe.verdicts.map(({ requirement }) => requirement);

export interface Backdrop {
  readonly probe: ProbeAnalysis;
  readonly unit: TemperatureUnit;
  /** What is drawn; anything beyond it is cut off here. */
  readonly domain: Stretch;
  /** Along x, in the panel's own scale: the whole panel, and the hold in it. */
  readonly panel: Stretch;
  readonly hold: Stretch;
}

const cutBox = (
  { unit, domain }: Backdrop,
  { low, high }: Stretch,
  along: Stretch,
  look: Pick<Box, "fill" | "fillOpacity" | "stroke">,
): Box => {
  const cut = (value: number): number =>
    Math.min(Math.max(toScale(unit, value), domain.low), domain.high);
  return { from: along.low, to: along.high, low: cut(low), high: cut(high), ...look };
};

const solidBoxes = (backdrop: Backdrop): readonly Box[] => {
  const { probe, panel, hold } = backdrop;
  const windows = requirementsOf(probe).map((asked) =>
    cutBox(backdrop, asked, panel, { fill: colour.window }),
  );
  const look = { fill: colour.band, fillOpacity: 0.34, stroke: colour.band };
  const held = probe.night.hold;
  return held === null ? windows : [...windows, cutBox(backdrop, held.band, hold, look)];
};

const dashedBoxes = (backdrop: Backdrop): readonly Box[] => {
  const { probe, hold } = backdrop;
  const look = { fill: colour.guard, stroke: colour.band };
  return probe.guardedBand === null ? [] : [cutBox(backdrop, probe.guardedBand, hold, look)];
};

const rules = ({ probe, unit, domain, panel }: Backdrop): readonly Rule[] => {
  const rule = (value: number, stroke: string, width: number, dash: readonly number[]): Rule => ({
    from: panel.low,
    to: panel.high,
    at: toScale(unit, value),
    stroke,
    width,
    dash,
  });
  const asked = requirementsOf(probe);
  const edges = asked.flatMap(({ low, high }) => [low, high]);
  const ceilings = asked.flatMap(({ ceiling }) => (ceiling === null ? [] : [ceiling]));
  return [
    ...edges.map((value) => rule(value, colour.windowEdge, 1.2, [])),
    ...ceilings.map((value) => rule(value, colour.limit, 1.6, [7, 4])),
  ].filter(({ at }) => at > domain.low && at < domain.high);
};

export const backdropLayers = (backdrop: Backdrop): readonly Spec[] => {
  const scales = { x: backdrop.panel, y: backdrop.domain };
  return [
    boxLayer(solidBoxes(backdrop), scales),
    boxLayer(dashedBoxes(backdrop), scales, [3, 3]),
    ruleLayer(rules(backdrop), scales),
  ];
};
