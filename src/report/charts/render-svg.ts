/**
 * Plots to SVG text. vega loads on first use only, and draw without
 * a browser: in Node and in a worker alike, where text is not measured but
 * estimated. Expressions are interpreted, never compiled to code, so that a
 * page's policy may forbid `eval`; everywhere, so that all draw the same.
 */
import type { Caption } from "./chart-theme.ts";
import { compiledPlot } from "./compiled-plot.ts";
import { finishSvg } from "./finish-svg.ts";
import { plotRows } from "./plot-spec.ts";
import type { Plot } from "./plot.ts";

export interface Chart extends Caption {
  readonly plot: Plot;
}

/** One view draws all plots: making another takes longer than drawing. */
const makeView = async () => {
  const [compiled, vega, { expressionInterpreter }] = await Promise.all([
    compiledPlot(),
    import("vega"),
    import("vega-interpreter"),
  ]);
  return new vega.View(vega.parse(compiled, undefined, { ast: true }), {
    expr: expressionInterpreter,
    renderer: "none",
    logLevel: vega.Error,
  });
};

type View = Awaited<ReturnType<typeof makeView>>;

const handIn = (view: View, plot: Plot): void => {
  view.width(plot.width).height(plot.height).padding(plot.padding);
  for (const name of ["x", "y"] as const) {
    const { low, high, ticks, words } = plot[name];
    view.signal(`${name}Low`, low).signal(`${name}High`, high);
    view.signal(`${name}Ticks`, ticks).signal(`${name}Words`, words);
  }
  // vega marks the rows it is given, so each drawing gets its own.
  for (const name of plotRows) {
    const rows: readonly object[] = plot[name] ?? [];
    view.data(
      name,
      rows.map((row) => Object.assign({}, row)),
    );
  }
};

/** Axes keep the ticks two plots share and add the new ones behind: emptied, they cannot. */
const emptyAxes = (view: View): Promise<View> =>
  view.signal("xTicks", []).signal("yTicks", []).runAsync();

const draw = async (view: View, chart: Chart): Promise<string> => {
  handIn(view, chart.plot);
  const svg = await view.toSVG();
  await emptyAxes(view);
  return finishSvg(svg, chart);
};

let view: Promise<View> | null = null;
let last: Promise<unknown> = Promise.resolve();

/** One chart as an `<svg>` element: same bytes for the same chart, in any order and time zone. */
export const renderSvg = (chart: Chart): Promise<string> => {
  view ??= makeView();
  const ready = view;
  // One after the other: they share the view. What went wrong with one is no matter to the next.
  const drawn = last.catch(() => null).then(async () => draw(await ready, chart));
  last = drawn;
  return drawn;
};
