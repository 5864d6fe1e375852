import { describe, expect, it } from "vitest";
import { idsIn, referencesIn } from "../../../src/kitchen/schema/references.ts";
import { readSource } from "../../../src/kitchen/text/kitchen-source.ts";

// Constructed, and broken in places: references are found all the same.
const reading = readSource(`
thermometers: { pen: , 2: }
cultures: [kefir, { id: own }, { low: 3 }, [x]]
tests:
  a:
    appliance: box
    container: [jars]
    oops: yes
    files:
      - probes: { Jar: { thermometer: pen }, Lid: food, Bath: { thermometer: [pen] } }
  b: text
batches:
  - { culture: own, appliance: box }
  - text
`);
const data = reading.ok ? reading.source.data : {};

describe("referencesIn", () => {
  it("finds every name with its place", () => {
    expect(referencesIn(data)).toEqual([
      { to: "appliances", id: "box", path: ["tests", "a", "appliance"] },
      {
        to: "thermometers",
        id: "pen",
        path: ["tests", "a", "files", 0, "probes", "Jar", "thermometer"],
      },
      { to: "appliances", id: "box", path: ["batches", 0, "appliance"] },
      { to: "cultures", id: "own", path: ["batches", 0, "culture"] },
    ]);
  });
});

describe("idsIn", () => {
  it("is in the file's order", () => {
    expect(idsIn(data, "thermometers")).toEqual(["pen", "2"]);
    expect(idsIn(data, "cultures")).toEqual(["kefir", "own"]);
    expect(idsIn(data, "containers")).toEqual([]);
  });
});
