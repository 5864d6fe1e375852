/**
 * Bundles the page: the screen's script and the worker's code, each whole and
 * minified, in one HTML file that needs nothing beside it.
 */
import { build } from "esbuild";
import type { BuildOptions, Metafile } from "esbuild";
import { pageStyle } from "../page/screen/page-style.ts";
import { style as reportStyle } from "../report/style.ts";
import { pageHtml } from "./page-html.ts";
import { precompiledPlot } from "./precompiled-plot.ts";
import { thirdPartyText } from "./third-party.ts";

export interface BuiltPage {
  readonly html: string;
  /** What went into it: of the screen, of the worker. */
  readonly metafiles: readonly Metafile[];
}

/** The files bundled, relative to the project's folder. */
export const inputsOf = (metafiles: readonly Metafile[]): readonly string[] =>
  metafiles.flatMap(({ inputs }) => Object.keys(inputs));

interface Bundled {
  readonly text: string;
  readonly metafile: Metafile;
}

const settings: BuildOptions = {
  bundle: true,
  format: "iife",
  platform: "browser",
  target: "es2022",
  minify: true,
  charset: "utf8",
  jsx: "automatic",
  jsxImportSource: "preact",
  legalComments: "none",
  logLevel: "warning",
  plugins: [precompiledPlot],
};

const bundled = async (root: string, own: BuildOptions): Promise<Bundled> => {
  const { outputFiles, metafile } = await build({
    ...settings,
    ...own,
    absWorkingDir: root,
    metafile: true,
    write: false,
  });
  return { text: outputFiles[0]?.text ?? "", metafile };
};

/** The same sources give the same bytes. `root` is the project's folder. */
export const buildPage = async (root: string, version: string): Promise<BuiltPage> => {
  const [screen, worker] = await Promise.all([
    bundled(root, { entryPoints: ["src/page/screen/main.tsx"] }),
    bundled(root, {
      entryPoints: ["src/page/work/worker.ts"],
      define: { HOLDBAND_VERSION: JSON.stringify(version) },
      // csv-parse works on Node's bytes, and a worker has none.
      inject: ["src/page/work/buffer.ts"],
    }),
  ]);
  const metafiles = [screen.metafile, worker.metafile];
  const html = pageHtml({
    style: `${reportStyle}\n${pageStyle}`,
    screen: screen.text,
    worker: worker.text,
    licences: thirdPartyText(root, inputsOf(metafiles)),
  });
  return { html, metafiles };
};
