import { describe, expect, it } from "vitest";
import { isWithin } from "../../src/folder/within.ts";

describe("isWithin", () => {
  it.each([
    ["/k", "/k/a", true],
    ["/k", "/k/a/b", true],
    ["/k", "/k/..a", true],
    ["/", "/a", true],
    ["/k", "/k", false],
    ["/k", "/", false],
    ["/k", "/kitchen", false],
    ["/k", "/k/../a", false],
    ["/k/l", "/k/a", false],
  ])("%s holds %s: %s", (folder, path, expected) => {
    expect(isWithin(folder, path)).toBe(expected);
  });
});
