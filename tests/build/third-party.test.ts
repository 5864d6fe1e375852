import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { packageFolder, thirdPartyText } from "../../src/build/third-party.ts";

const root = fileURLToPath(new URL("../../", import.meta.url));

describe("packageFolder", () => {
  it.each([
    ["src/cli/main.ts", null],
    ["node_modules/zod/v4/core.js", "node_modules/zod"],
    ["node_modules/@scope/name/lib/a.js", "node_modules/@scope/name"],
    ["node_modules/a/node_modules/b/index.js", "node_modules/a/node_modules/b"],
  ])("of %s", (input, folder) => expect(packageFolder(input)).toBe(folder));
});

describe("thirdPartyText", () => {
  it("carries each package's own licence once", () => {
    const inputs = ["commander/lib/a.js", "commander/lib/b.js", "csv-parse/lib/index.js"];
    const text = thirdPartyText(
      root,
      inputs.map((name) => `node_modules/${name}`),
    );
    expect(text.match(/^commander \d/gm)).toHaveLength(1);
    expect(text).toMatch(/^csv-parse [\d.]+ \(MIT\)$/m);
    expect(text.match(/Permission is hereby granted/g)).toHaveLength(2);
  });

  it("prints once a licence that packages share word for word, below all their names", () => {
    const names = ["d3-path", "d3-scale", "d3-time", "d3-array"];
    const text = thirdPartyText(
      root,
      names.map((name) => `node_modules/${name}/src/index.js`),
    );
    for (const name of names) expect(text.match(new RegExp(`^${name} \\d`, "gm"))).toHaveLength(1);
    const holders = new Set(
      names.map((name) => readFileSync(`${root}node_modules/${name}/LICENSE`, "utf8").trim()),
    );
    expect(holders.size).toBeLessThan(names.length);
    for (const licence of holders) expect(text.split(licence)).toHaveLength(2);
  });
});
