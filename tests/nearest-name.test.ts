import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { editDistance, nearestName } from "../src/nearest-name.ts";

describe("editDistance", () => {
  // kitten to sitting takes 3, saturday to sunday 3: the textbook examples of
  // the distance (Wagner and Fischer 1974 give the algorithm).
  it.each([
    ["kitten", "sitting", 3],
    ["saturday", "sunday", 3],
    ["", "abc", 3],
    ["same", "same", 0],
  ])("from %s to %s", (a, b, distance) => {
    expect(editDistance(a, b)).toBe(distance);
    expect(editDistance(b, a)).toBe(distance);
  });

  it("is a metric: never longer by way of a third word", () => {
    const word = fc.string({ maxLength: 8 });
    fc.assert(
      fc.property(word, word, word, (a, b, c) => {
        expect(editDistance(a, c)).toBeLessThanOrEqual(editDistance(a, b) + editDistance(b, c));
      }),
    );
  });
});

// Constructed names.
describe("nearestName", () => {
  const names = ["thermometers", "appliances", "pen", "box", "Jar", "30"];

  it.each([
    ["thermometer", "thermometers"],
    ["aplianses", "appliances"],
    ["Pen ", "pen"],
    ["jar", "Jar"],
    ["pan", "pen"],
    ["xyz", ""],
    ["35", ""],
    ["", ""],
    ["z".repeat(50_000), ""],
  ])("for %.20s offers %s", (typed, offered) => {
    expect(nearestName(typed, names)).toBe(offered);
  });

  it("offers nothing where there is nothing", () => {
    expect(nearestName("pen", [])).toBe("");
  });
});
