import { parseDocument } from "yaml";
import { describe, expect, it } from "vitest";
import { entriesOf, isPlainMap, plainData } from "../../../src/kitchen/text/plain-data.ts";

const read = (text: string) =>
  plainData(parseDocument(text, { schema: "failsafe", uniqueKeys: false }).contents);

// Constructed.
describe("plainData", () => {
  it("keeps keys in the order of the file", () => {
    const { data } = read("10: a\nb: c\n2: d\n");
    expect(isPlainMap(data) && entriesOf(data)).toEqual([
      ["10", "a"],
      ["b", "c"],
      ["2", "d"],
    ]);
  });

  it.each([
    ["a: 1\na: 2\n", ["a"], "it a second time"],
    ["a: { __proto__: 1 }\n", ["a", "__proto__"], '"__proto__"'],
    ["a: [x, &b y]\n", ["a", 1], "an anchor or alias, which is not used here"],
  ])("complains of %j", (text, path, found) => {
    expect(read(text).mistakes).toMatchObject([{ path, found }]);
  });

  it("takes the first of two equal keys", () => {
    expect(read("a: 1\na: 2\n").data).toEqual(Object.assign(Object.create(null), { a: "1" }));
  });
});
