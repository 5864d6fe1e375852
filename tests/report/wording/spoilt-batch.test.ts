import { describe, expect, it } from "vitest";
import { troubles } from "../../../src/kitchen/kitchen.ts";
import { spoiltBatchText } from "../../../src/report/wording/spoilt-batch.ts";

describe("spoiltBatchText", () => {
  it("is silent where nothing was seen", () => expect(spoiltBatchText([])).toBeNull());

  it.each(troubles)("says for %s what to do with all of it", (trouble) => {
    const text = spoiltBatchText([trouble]) ?? "";
    for (const step of ["throw all of it away", "scrape", "taste", "Clean", "fresh starter"]) {
      expect(text).toContain(step);
    }
  });

  it("names everything that was seen", () => {
    expect(spoiltBatchText(["pink", "fuzzy", "off-smelling"])).toMatch(
      /^Pink colour, fuzz and a foul smell: throw all of it away\./,
    );
  });
});
