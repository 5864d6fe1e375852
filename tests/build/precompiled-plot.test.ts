import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { describe, expect, it } from "vitest";
import { precompiledPlot } from "../../src/build/precompiled-plot.ts";
import { sizes } from "../../src/report/charts/chart-theme.ts";
import { compiledPlot } from "../../src/report/charts/compiled-plot.ts";
import { nightPlot } from "../../src/report/charts/night.ts";
import { renderSvg } from "../../src/report/charts/render-svg.ts";
import { caption } from "../report/drawing.ts";
import { startWallClock, unprovenNight } from "../report/sample-analysis.ts";

const root = fileURLToPath(new URL("../../", import.meta.url));

/** A module as the build makes it, and the files it was made of. */
const built = async <Module>(file: string) => {
  const { outputFiles, metafile } = await build({
    absWorkingDir: root,
    entryPoints: [file],
    bundle: true,
    format: "esm",
    platform: "browser",
    plugins: [precompiledPlot],
    metafile: true,
    write: false,
  });
  const address = `data:text/javascript,${encodeURIComponent(outputFiles[0]?.text ?? "")}`;
  const module = (await import(/* @vite-ignore */ address)) as Module;
  return { module, inputs: Object.keys(metafile.inputs) };
};

describe("precompiledPlot", () => {
  it("puts the very spec that is compiled from the sources in the compiler's place", async () => {
    const file = "src/report/charts/compiled-plot.ts";
    const { module, inputs } = await built<{ compiledPlot: typeof compiledPlot }>(file);
    expect(inputs).toEqual([file]);
    // `toEqual`: keys set to undefined are lost on the way through text.
    expect(await module.compiledPlot()).toEqual(await compiledPlot());
  });

  it("draws the same, byte for byte", async () => {
    const file = "src/report/charts/render-svg.ts";
    const { module, inputs } = await built<{ renderSvg: typeof renderSvg }>(file);
    expect(inputs.filter((input) => input.startsWith("node_modules/vega-lite/"))).toEqual([]);
    const [probe] = unprovenNight().probes;
    const asked = { probe: probe!, context: [], startWallClock, unit: "degC" } as const;
    for (const size of sizes) {
      const chart = { ...caption, plot: nightPlot(asked, size) };
      // oxlint-disable-next-line no-await-in-loop -- two charts
      expect(await module.renderSvg(chart)).toBe(await renderSvg(chart));
    }
  });
});
