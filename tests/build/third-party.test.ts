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
});
