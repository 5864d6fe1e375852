/**
 * The one spec of all plots, compiled for vega. Compiling needs vega-lite, the
 * largest of all packages, and gives the same each time: the build does it once
 * and puts the outcome in place of this file.
 */
import type { Spec } from "vega";
import { plotSpec } from "./plot-spec.ts";

export const compiledPlot = async (): Promise<Spec> => {
  const [{ compile }, { Error: errors, logger }] = await Promise.all([
    import("vega-lite"),
    import("vega"),
  ]);
  const spec = plotSpec as unknown as Parameters<typeof compile>[0];
  return compile(spec, { logger: logger(errors) }).spec;
};
