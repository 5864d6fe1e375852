import { describe, expect, it } from "vitest";
import {
  batchShape,
  saidOfBatch,
  saysSomething,
} from "../../../src/input/kitchen/batch-options.ts";
import { readOptions } from "../../../src/input/read-options.ts";
import { problemText } from "../../../src/problem.ts";

const read = (typed: Readonly<Record<string, string | readonly string[]>>) =>
  readOptions(
    batchShape,
    Object.fromEntries(
      Object.entries(typed).map(([key, value]) => [
        key,
        typeof value === "string" ? [value] : value,
      ]),
    ),
  );
const said = (typed: Parameters<typeof read>[0]) => {
  const options = read(typed);
  return options.ok ? saidOfBatch(options.value) : problemText(options.problem);
};

describe("saidOfBatch", () => {
  it("is what was said, as kitchen.yaml has it", () => {
    expect(
      said({
        date: "2026-11-20",
        culture: "reuteri",
        milk: "Thin",
        heated: "yes",
        generation: "2",
        starter: "5%",
        hours: "36h",
        separated: "a  little",
        sourness: "as wished",
        trouble: ["fuzzy,pink", "off-smelling"],
        moved: "no",
        notes: " none ",
      }),
    ).toEqual({
      date: "2026-11-20",
      culture: "reuteri",
      milk: "thin",
      heated: true,
      generation: 2,
      starter: "5 %",
      hours: "36h",
      separated: "a little",
      sourness: "as wished",
      trouble: ["pink", "fuzzy", "off-smelling"],
      moved: false,
      notes: "none",
    });
    expect(said({ hours: "36" })).toEqual({ hours: 36 });
    expect(said({})).toEqual({});
  });

  it("takes an answer back", () => {
    const keys = ["milk", "heated", "generation", "starter", "hours", "separated", "sourness"];
    for (const key of [...keys, "moved"])
      expect(said({ [key]: "Unknown" })).toEqual({ [key]: null });
    expect(said({ trouble: "none" })).toEqual({ trouble: null });
    expect(said({ notes: "" })).toEqual({ notes: null });
  });

  it("lets a sign of trouble stand beside none", () => {
    expect(said({ trouble: ["none", "pink"] })).toEqual({ trouble: ["pink"] });
  });

  it.each([
    ["milk", "skim", "--milk expects one of thin, usual, rich, or unknown"],
    ["heated", "maybe", "--heated expects yes or no, or unknown"],
    ["generation", "0", "--generation expects 1 for a fresh starter"],
    ["starter", "5", "--starter expects a part of the whole, such as 5%"],
    ["hours", "0", "--hours expects a time above 0"],
    ["separated", "some", "--separated expects one of none, a little, much"],
    ["sourness", "sour", "--sourness expects one of mild, as wished, sharp"],
    ["trouble", "pink,green", "--trouble expects pink, orange, fuzzy, off-smelling, several"],
    ["moved", "", "--moved expects yes or no"],
    ["date", "20 November", "--date expects a day as year-month-day"],
  ])("refuses --%s %s", (key, typed, says) => expect(said({ [key]: typed })).toContain(says));
});

describe("saysSomething", () => {
  it.each([
    [{}, false],
    [{ setting: "38" }, true],
    [{ container: "jars" }, true],
    [{ milk: "unknown" }, true],
    [{ kitchen: "there" }, false],
  ])("%j: %s", (typed, something) => {
    const options = read(typed);
    expect(options.ok && saysSomething(options.value)).toBe(something);
  });
});
