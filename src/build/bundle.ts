/**
 * Bundles the program into dist/: ESM in lazily loaded parts, so that --help
 * loads neither charts nor statistics, and the packed package needs nothing
 * else installed. Beside it the page, which `holdband page` copies.
 */
import { chmodSync, mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { basename, join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { buildPage, inputsOf } from "./page.ts";
import { precompiledPlot } from "./precompiled-plot.ts";
import { thirdPartyText } from "./third-party.ts";

const root = fileURLToPath(new URL("../../", import.meta.url));
const dist = join(root, "dist");
const program = "holdband.js";

const { version } = JSON.parse(readFileSync(join(root, "package.json"), "utf8")) as {
  version: string;
};

const { outputFiles, metafile } = await build({
  absWorkingDir: root,
  entryPoints: { holdband: "src/cli/main.ts" },
  outdir: "dist",
  bundle: true,
  splitting: true,
  format: "esm",
  platform: "node",
  target: "node20",
  // Drawing to a raster image is not needed; charts become SVG text.
  external: ["canvas"],
  // Names stay, so that an unexpected error can be understood.
  minifySyntax: true,
  minifyWhitespace: true,
  legalComments: "none",
  define: { HOLDBAND_VERSION: JSON.stringify(version) },
  metafile: true,
  write: false,
  logLevel: "warning",
  plugins: [precompiledPlot],
});

const page = await buildPage(root, version);

// A CommonJS package inside (commander) asks for modules of Node by require, which ESM lacks.
const requireForCommonJs =
  'import{createRequire as holdbandRequire}from"node:module";const require=holdbandRequire(import.meta.url);\n';

rmSync(dist, { recursive: true, force: true });
mkdirSync(dist);
for (const { path, text } of outputFiles) {
  const head = basename(path) === program ? "#!/usr/bin/env node\n" : "";
  const needsRequire = text.includes("typeof require");
  writeFileSync(path, head + (needsRequire ? requireForCommonJs : "") + text);
}
chmodSync(join(dist, program), 0o755);
writeFileSync(join(dist, "page.html"), page.html);
const inputs = inputsOf([metafile, ...page.metafiles]);
writeFileSync(join(dist, "THIRD-PARTY.txt"), thirdPartyText(root, inputs));
