import { describe, expect, it } from "vitest";
import {
  growableBytes,
  growableCounts,
  growableFloats,
} from "../../../src/readings/rows/growable.ts";

describe("growable arrays", () => {
  it.each([
    ["floats", growableFloats],
    ["counts", growableCounts],
    ["bytes", growableBytes],
  ])("%s keep all values past the first capacity", (_, create) => {
    const values = create();
    for (let at = 0; at < 5000; at += 1) values.push(at % 251);
    expect(values.length).toBe(5000);
    expect(Array.from(values.view())).toEqual(Array.from({ length: 5000 }, (__, at) => at % 251));
  });
});
