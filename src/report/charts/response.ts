/** What an appliance's hold is expected to be at each setting, for each container, over the cultures' windows. */
import type { Size } from "./chart-theme.ts";
import type { Plot } from "./plot.ts";
import { responseBackdrop } from "./response-backdrop.ts";
import { columnsResponse } from "./response-columns.ts";
import { containerNames, namesHeight } from "./response-names.ts";
import { stepsResponse } from "./response-steps.ts";
import { drawnCurves, responseDomain } from "./response-view.ts";
import type { ResponseInput } from "./response-view.ts";
import { leftAxis, rightAxis } from "./temperature-axes.ts";

const plotHeight = 270;
const space = { left: 54, right: 58, top: 10, bottom: 46 } as const;
const mostTicks = 7;
const settingTicks = { wide: 10, narrow: 4 } as const;

/** How to draw it at a size; null where nothing can be expected near any window. */
export const responsePlot = (input: ResponseInput): ((size: Size) => Plot) | null => {
  const curves = drawnCurves(input);
  if (curves.length === 0 || input.requirements.length === 0) return null;
  return (size) => drawResponse(input, size);
};

const drawResponse = (input: ResponseInput, size: Size): Plot => {
  const { unit, advice } = input;
  const curves = drawnCurves(input);
  const width = size.width - space.left - space.right;
  const kind = curves[0]?.points[0]?.setting.kind;
  const names = kind === "fixed" ? 0 : namesHeight(curves) + 8;
  const domain = responseDomain(input, curves);
  const vertical = { domain, height: plotHeight };
  // Names stand below what is drawn, in room of their own.
  const below = ((domain.high - domain.low) * names) / plotHeight;
  const panel = { unit, vertical, width };
  const drawn =
    kind === "step"
      ? { ...stepsResponse(curves, advice.tests, panel, settingTicks[size.name]), boxes: [] }
      : columnsResponse(curves, advice.tests, panel, kind === "fixed");
  const backdrop = responseBackdrop({ ...input, vertical, width });
  const place = { right: width - 4, top: plotHeight + 10, size: size.name };
  const named =
    kind === "fixed" ? { texts: [], rules: [], markers: [] } : containerNames(curves, place);
  return {
    width,
    height: plotHeight + names,
    padding: space,
    x: drawn.x,
    y: { ...leftAxis(unit, domain, mostTicks), low: domain.low - below },
    boxes: [...backdrop.boxes, ...drawn.boxes],
    rules: [...backdrop.rules, ...drawn.rules, ...named.rules],
    corridors: drawn.corridors,
    curves: drawn.curves,
    markers: [...drawn.markers, ...named.markers],
    context: [],
    line: [],
    points: [],
    texts: [...backdrop.texts, ...named.texts, ...rightAxis(unit, vertical, mostTicks, width)],
  };
};
