import { execFileSync } from "node:child_process";
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { root, temporaryFolder, write } from "./cli/run-holdband.ts";

const npm = (line: readonly string[], cwd: string): string =>
  execFileSync("npm", line, { cwd, encoding: "utf8", stdio: ["ignore", "pipe", "pipe"] });

const { version } = JSON.parse(readFileSync(join(root, "package.json"), "utf8")) as {
  version: string;
};

describe("the packed package", () => {
  it("installs offline into an empty folder and runs the demo there", () => {
    const packed = temporaryFolder();
    // Without scripts: dist/ is built already, and other tests are running it.
    npm(["pack", "--ignore-scripts", "--pack-destination", packed], root);
    const tarball = join(packed, readdirSync(packed)[0] ?? "");
    const folder = temporaryFolder();
    write(folder, "package.json", '{ "private": true }');
    npm(["install", "--offline", "--no-audit", "--no-fund", tarball], folder);
    expect(
      readdirSync(join(folder, "node_modules")).filter((name) => !name.startsWith(".")),
    ).toEqual(["holdband"]);
    expect(npm(["exec", "--offline", "--", "holdband", "--version"], folder).trim()).toBe(version);
    const shown = npm(["exec", "--offline", "--", "holdband", "demo"], folder);
    expect(shown).toContain(join("holdband-demo", "reports", "kitchen.html"));
    expect(existsSync(join(folder, "holdband-demo", "reports", "kitchen.html"))).toBe(true);
  });

  it("carries the program, its licences and the demo, and no trace of this machine", () => {
    const listed = JSON.parse(npm(["pack", "--ignore-scripts", "--dry-run", "--json"], root)) as [
      { files: { path: string }[] },
    ];
    const paths = listed[0].files.map(({ path }) => path);
    for (const path of [
      "dist/holdband.js",
      "dist/page.html",
      "dist/THIRD-PARTY.txt",
      "LICENSE",
      "README.md",
    ]) {
      expect(paths).toContain(path);
    }
    expect(paths.filter((path) => !/^(dist|fixtures)\/|^[^/]+$/.test(path))).toEqual([]);
    expect(paths.filter((path) => path.endsWith(".map"))).toEqual([]);
    for (const path of paths.filter((one) => one.startsWith("dist/"))) {
      expect(readFileSync(join(root, path), "utf8").includes(root), path).toBe(false);
    }
  });
});
