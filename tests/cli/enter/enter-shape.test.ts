import { describe, expect, it } from "vitest";
import { enterShape, outAlone } from "../../../src/cli/enter/enter-shape.ts";
import { problemText } from "../../../src/problem.ts";

describe("enterShape", () => {
  it("reads what is said of the readings", () => {
    const options = enterShape.parse({
      probe: ["Jar=food", "Basin=bath"],
      thermometer: ["pen", "Basin=second"],
      unit: ["F"],
      date: ["2026-10-03"],
    });
    expect(options).toMatchObject({
      probe: [
        ["Jar", "food"],
        ["Basin", "bath"],
      ],
      thermometer: [
        { probe: null, id: "pen" },
        { probe: "Basin", id: "second" },
      ],
      unit: "degF",
      date: "2026-10-03",
    });
  });

  it.each([
    ["date", "3.10.2026"],
    ["date", "2026-02-30"],
    ["unit", "K"],
    ["probe", "Jar"],
  ])("refuses --%s %s", (key, value) => {
    expect(enterShape.safeParse({ [key]: [value] }).success).toBe(false);
  });
});

describe("outAlone", () => {
  it("lets nothing be said that a CSV file would lose", () => {
    expect(outAlone(enterShape.parse({ out: ["n.csv"], unit: ["F"], probe: ["J=food"] })).ok).toBe(
      true,
    );
    for (const [key, value] of [
      ["container", "jars"],
      ["thermometer", "pen"],
      ["kitchen", "k"],
      ["room", "17..25"],
    ] as const) {
      const alone = outAlone(enterShape.parse({ out: ["n.csv"], [key]: [value] }));
      expect(alone.ok ? "" : problemText(alone.problem)).toContain(`--${key}`);
    }
  });
});
