/** The licence texts of every package whose code went into the bundle. */
import { readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";

interface Manifest {
  readonly name: string;
  readonly version: string;
  readonly license?: string;
}

/** "node_modules/a/node_modules/@b/c/index.js" to "node_modules/a/node_modules/@b/c". */
export const packageFolder = (input: string): string | null => {
  const parts = input.split("/");
  const at = parts.lastIndexOf("node_modules");
  if (at === -1) return null;
  const length = parts[at + 1]?.startsWith("@") === true ? 2 : 1;
  return parts.slice(0, at + 1 + length).join("/");
};

const licenceText = (folder: string): string => {
  const file = readdirSync(folder).find((name) => /^licen[cs]e(\.|$)/i.test(name));
  const text = file === undefined ? "" : readFileSync(join(folder, file), "utf8");
  return text.replaceAll(/\r\n?/g, "\n").trim();
};

const entry = (folder: string): string => {
  const manifest = JSON.parse(readFileSync(join(folder, "package.json"), "utf8")) as Manifest;
  const text = licenceText(folder);
  if (manifest.license === undefined && text === "") {
    throw new Error(`${manifest.name} states no licence; it cannot be bundled.`);
  }
  return `${manifest.name} ${manifest.version} (${manifest.license ?? "see below"})\n\n${text}`.trim();
};

/** `inputs` are the bundled files' paths relative to `root`. Fails where a package states no licence. */
export const thirdPartyText = (root: string, inputs: readonly string[]): string => {
  const folders = new Set(inputs.map(packageFolder).filter((folder) => folder !== null));
  const entries = [...folders].toSorted().map((folder) => entry(join(root, folder)));
  const rule = `\n\n${"-".repeat(78)}\n\n`;
  return `This program contains code of the following packages.${rule}${entries.join(rule)}\n`;
};
