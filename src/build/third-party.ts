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

interface Package {
  readonly name: string;
  readonly licence: string;
}

const readPackage = (folder: string): Package => {
  const manifest = JSON.parse(readFileSync(join(folder, "package.json"), "utf8")) as Manifest;
  const licence = licenceText(folder);
  if (manifest.license === undefined && licence === "") {
    throw new Error(`${manifest.name} states no licence; it cannot be bundled.`);
  }
  const { name, version, license } = manifest;
  return { name: `${name} ${version} (${license ?? "see below"})`, licence };
};

/** Packages that share a licence, word for word and by the same holders, stand above it together. */
const entries = (packages: readonly Package[]): readonly string[] => {
  const names = new Map<string, readonly string[]>();
  for (const { name, licence } of packages) {
    names.set(licence, [...(names.get(licence) ?? []), name]);
  }
  return [...names].map(([licence, sharing]) => `${sharing.join("\n")}\n\n${licence}`.trim());
};

/** `inputs` are the bundled files' paths relative to `root`. Fails where a package states no licence. */
export const thirdPartyText = (root: string, inputs: readonly string[]): string => {
  const folders = new Set(inputs.map(packageFolder).filter((folder) => folder !== null));
  const packages = [...folders].toSorted().map((folder) => readPackage(join(root, folder)));
  const rule = `\n\n${"-".repeat(78)}\n\n`;
  return `This program contains code of the following packages.${rule}${entries(packages).join(rule)}\n`;
};
