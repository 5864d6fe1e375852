/** Specs to SVG text. vega and vega-lite load on first use only, and draw without a browser. */
import { finishSvg } from "./finish-svg.ts";
import type { Chart } from "./chart-theme.ts";

const loadLibraries = async () => {
  const [vegaLite, vega] = await Promise.all([import("vega-lite"), import("vega")]);
  return { vegaLite, vega };
};

let libraries: ReturnType<typeof loadLibraries> | null = null;

/** One chart as an `<svg>` element: same bytes for the same chart, in any time zone. */
export const renderSvg = async (chart: Chart): Promise<string> => {
  libraries ??= loadLibraries();
  const { vegaLite, vega } = await libraries;
  const spec = chart.spec as unknown as Parameters<typeof vegaLite.compile>[0];
  const compiled = vegaLite.compile(spec, { logger: vega.logger(vega.Error) });
  const view = new vega.View(vega.parse(compiled.spec), {
    renderer: "none",
    logLevel: vega.Error,
  });
  try {
    return finishSvg(await view.toSVG(), chart);
  } finally {
    view.finalize();
  }
};
