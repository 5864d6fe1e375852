/** Puts the compiled spec of all plots in place of what compiles it. */
import type { Plugin } from "esbuild";
import { compiledPlot } from "../report/charts/compiled-plot.ts";

const contents = async (): Promise<string> =>
  `export const compiledPlot = async () => (${JSON.stringify(await compiledPlot())});`;

export const precompiledPlot: Plugin = {
  name: "precompiled-plot",
  setup: ({ onLoad }) => {
    onLoad({ filter: /[\\/]charts[\\/]compiled-plot\.ts$/ }, async () => ({
      contents: await contents(),
      loader: "js",
    }));
  },
};
