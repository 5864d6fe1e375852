import { describe, expect, it } from "vitest";
import { searchLag } from "../../src/container/lag-search.ts";
import { course, warmingBath, warmingFood } from "./courses.ts";

const bath = course(0.1, 600, warmingBath);

describe("searchLag", () => {
  it.each([2, 7, 25, 90, 300])("finds a lag of %d min (closed form)", (lag) => {
    const found = searchLag({ bath, food: course(0.5, 600, warmingFood(lag)), room: null })!;
    expect(found.lag / lag).toBeCloseTo(1, 3);
    expect(found.squares).toBeLessThan(found.squaresAtEnd / 1000);
  });

  it("is null at an end of the range: food that follows at once", () => {
    expect(searchLag({ bath, food: course(0.5, 600, warmingBath), room: null })).toBeNull();
  });
});
