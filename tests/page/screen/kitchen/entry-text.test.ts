import { describe, expect, it } from "vitest";
import { entryText } from "../../../../src/page/screen/kitchen/entry-text.ts";

describe("entryText", () => {
  it("says an entry in one line, without what stands elsewhere", () => {
    const entry = {
      name: "Box",
      kind: "warming box",
      marks: [1, 2],
      moved: "2026-05-01",
      notes: null,
    };
    expect(entryText(entry, ["name"])).toBe(
      "kind: warming box; marks: 1, 2; moved or repaired: 2026-05-01",
    );
  });

  it("says yes and no, and lists inside lists", () => {
    const checks = [{ ice: [0.3, 0.2], date: "2026-02-14" }];
    expect(entryText({ heated: true, checks }, [])).toBe(
      "heated: yes; checks: ice: 0.3, 0.2; date: 2026-02-14",
    );
  });
});
