import { describe, expect, it } from "vitest";
import { createRowIdReader } from "../../../src/readings/rows/row-ids.ts";

const idsOf = (...names: string[]) => {
  const reader = createRowIdReader({ column: 1, heading: "Sensor" });
  for (const name of names) reader.read(["22:00", name]);
  return reader.finish();
};

describe("createRowIdReader", () => {
  it("numbers the names as they come; an empty cell stands for the one above", () => {
    const ids = idsOf("jar", " bath ", "", "jar");
    expect(ids?.names).toEqual(["jar", "bath"]);
    expect([...ids!.ofRow]).toEqual([0, 1, 1, 0]);
  });
  it("has nothing to tell of one name, or of more than a test has sensors", () => {
    expect(idsOf("jar", "jar")).toBeNull();
    expect(idsOf(...Array.from({ length: 40 }, (_, at) => `row ${at}`))).toBeNull();
  });
});
