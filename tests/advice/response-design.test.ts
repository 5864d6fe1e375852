import { describe, expect, it } from "vitest";
import { containerIn } from "../../src/advice/container-knowledge.ts";
import { responseDesign } from "../../src/advice/response-design.ts";
import { roomPrior } from "../../src/advice/response-prior.ts";
import type { Control, Setting } from "../../src/kitchen/kitchen.ts";
import { basin, cooker, fixed, jars, mark, program, step } from "./constructed.ts";

const containers = [jars, basin].map((container) => ({
  container,
  known: containerIn(container, "cooker", []),
}));
const designOf = (control: Control) =>
  responseDesign(cooker({ control }), roomPrior(true), containers);
const place = { container: "jars", room: 23, bath: 38 };

/** Entries by what they stand for: constructed, worked by hand from the model's sum. */
const entries = (control: Control, setting: Setting) => {
  const { terms, row } = designOf(control);
  const values = row({ ...place, setting });
  return terms.map(({ term }, index) => {
    const which = "container" in term ? term.container : "";
    return `${term.code} ${which}`.trim() + ` ${values[index]}`;
  });
};

describe("responseDesign", () => {
  it("counts steps from 40 degC, the room from 21 and takes the container's share of bath minus room", () => {
    expect(entries({ kind: "steps", low: 30, high: 60, step: 1 }, step(38))).toEqual([
      "level 1",
      "slope -2",
      "room 2",
      "share-lost jars -15",
      "share-lost basin 0",
    ]);
  });

  it("gives the bath itself no share lost", () => {
    const { terms, row } = designOf({ kind: "fixed" });
    const values = row({ ...place, container: null, setting: fixed });
    expect(terms.map(({ term }) => term.code)).toEqual([
      "level",
      "room",
      "share-lost",
      "share-lost",
    ]);
    expect([...values]).toEqual([1, 2, 0, 0]);
  });

  it("gives each program a level of its own", () => {
    expect(entries({ kind: "programs", programs: ["warm", "mild"] }, program("mild"))).toEqual([
      "level 0",
      "level 1",
      "room 2",
      "share-lost jars -15",
      "share-lost basin 0",
    ]);
  });

  it("counts marks from the dial's middle, each step with its own unevenness", () => {
    const marks = ["1", "2", "3", "4"];
    expect(entries({ kind: "marks", marks }, mark("4"))).toEqual([
      "level 1",
      "slope 1.5",
      // The middle lies between 2 and 3: from there the steps up to 3 and 4 count.
      "mark 0",
      "mark 1",
      "mark 1",
      "room 2",
      "share-lost jars -15",
      "share-lost basin 0",
    ]);
    const down = entries({ kind: "marks", marks }, mark("1"));
    expect(down.slice(1, 5)).toEqual(["slope -1.5", "mark -1", "mark 0", "mark 0"]);
  });
});
