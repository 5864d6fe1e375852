import { describe, expect, it } from "vitest";
import * as names from "../../../src/kitchen/schema/written-names.ts";

// Constructed.

describe("readName", () => {
  it.each(["jar", "温度計", "Küche 2", "🍯", "x".repeat(60), "🍯".repeat(60)])("takes %s", (name) =>
    expect(names.readName(name)).toBe(name),
  );
  it.each(["", "  ", "x".repeat(61), "a\nb", "a\u0000", "a\u202Eb", "a\u2028b", "\uD800"])(
    "refuses %j",
    (name) => expect(names.readName(name)).toBeNull(),
  );
  it("drops spaces around it", () => expect(names.readName(" jar ")).toBe("jar"));
});

describe("readPath", () => {
  it.each(["readings/night.csv", "night.csv", "a b/ü.csv", "a/..b/c...csv"])("takes %s", (path) =>
    expect(names.readPath(path)).toBe(path),
  );
  it.each([
    "",
    ".",
    "..",
    "../a",
    "a/../b",
    "a/..",
    "./a",
    "/a",
    "//server/a",
    "a//b",
    "a/",
    "C:/a",
    "c:a",
    "a\\b",
    "..\\a",
    "a\u0000b",
    "a\nb",
    "a/.. /b",
    "x".repeat(501),
  ])("refuses %j", (path) => expect(names.readPath(path)).toBeNull());
});

describe("readSha256, readNote, readHeading, readWord", () => {
  it("takes 64 hexadecimal digits", () => {
    expect(names.readSha256("AB".repeat(32))).toBe("ab".repeat(32));
    for (const text of ["ab", "g".repeat(64), "a".repeat(65)]) {
      expect(names.readSha256(text)).toBeNull();
    }
  });

  it("takes notes of several lines, and long headings", () => {
    expect(names.readNote("two\nlines\tand a tab")).toBe("two\nlines\tand a tab");
    expect(names.readNote("bell \u0007")).toBeNull();
    expect(names.readHeading("x".repeat(200))).toHaveLength(200);
    expect(names.readHeading("x".repeat(201))).toBeNull();
  });

  it("takes a word as it is meant", () => {
    const read = names.readWord(["jars in water", "basin"] as const);
    expect([" Jars  in water", "BASIN", "jars", ""].map(read)).toEqual([
      "jars in water",
      "basin",
      null,
      null,
    ]);
  });
});
