import { describe, expect, it } from "vitest";
import { toKitchenTerminal } from "../../src/report/kitchen-terminal.ts";
import { expectGolden } from "./golden.ts";
import { hostileKitchen, oneAppliance, sampleKitchen, untestedKitchen } from "./sample-kitchen.ts";

const plain = { colour: false, ascii: false, width: 80, report: "reports/kitchen.html" };

describe("toKitchenTerminal", () => {
  it.each([60, 80, 100])("writes the kitchen at %d columns as kept", (width) => {
    expectGolden(`kitchen-${width}.txt`, toKitchenTerminal(sampleKitchen(), { ...plain, width }));
  });

  it("tells of tests that could not be read, of checks to look at, and where the report is", () => {
    const text = toKitchenTerminal(sampleKitchen(), plain).replaceAll(/\s+/g, " ");
    expect(text).toContain("Not read Circulating bath, 42 °C (107.6 °F), Jars in water");
    expect(text).toContain("found none in bath-42.csv, line 1");
    expect(text).toContain("Check Pen thermometer: In boiling water it read");
    expect(text).toContain("Report reports/kitchen.html");
  });

  it("says nothing of a report that was not written", () => {
    const { report: _, ...without } = plain;
    expect(toKitchenTerminal(sampleKitchen(), without)).not.toMatch(/^ {2}Report/m);
  });

  it("uses colour only as an addition: without it every character else is the same", () => {
    const coloured = toKitchenTerminal(sampleKitchen(), { ...plain, colour: true });
    // oxlint-disable-next-line no-control-regex
    const codes = coloured.match(/\u001b\[[\d;]*m/g) ?? [];
    // Five set-ups by three cultures, each mark opened and closed.
    expect(codes.length).toBe(30);
    // oxlint-disable-next-line no-control-regex
    expect(coloured.replaceAll(/\u001b\[[\d;]*m/g, "")).toBe(
      toKitchenTerminal(sampleKitchen(), plain),
    );
  });

  it.each([40, 52, 64, 80, 120])("keeps to %d columns", (width) => {
    for (const kitchen of [sampleKitchen(), oneAppliance("box"), untestedKitchen()]) {
      const text = toKitchenTerminal(kitchen, { ...plain, width });
      for (const line of text.split("\n")) expect([...line].length).toBeLessThanOrEqual(width);
    }
  });

  it("keeps to printable ASCII where asked, and lets no name steer the terminal", () => {
    expect(toKitchenTerminal(hostileKitchen(), { ...plain, ascii: true })).toMatch(
      /^[\u0020-\u007e\n]+$/,
    );
    expect(toKitchenTerminal(hostileKitchen(), plain)).not.toMatch(
      // oxlint-disable-next-line no-control-regex
      /[\u0000-\u0009\u000b-\u001f\u202e]/,
    );
  });
});
