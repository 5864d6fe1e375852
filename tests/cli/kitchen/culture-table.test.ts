import { describe, expect, it } from "vitest";
import { cultureTable } from "../../../src/cli/kitchen/culture-table.ts";
import { cultures } from "../../../src/culture/catalogue.ts";

const page = { width: 80, ascii: false, unit: "degC" } as const;

const row = (unit: "degC" | "degF") =>
  cultureTable(cultures, { ...page, unit }).find((line) => line.startsWith("yoghurt "));

describe("cultureTable", () => {
  it("fits 80 columns with every figure of the catalogue, in either unit", () => {
    for (const unit of ["degC", "degF"] as const) {
      const lines = cultureTable(cultures, { ...page, unit });
      for (const line of lines) expect(line.length, line).toBeLessThanOrEqual(80);
      for (const { id } of cultures) {
        expect(lines.filter((line) => line.startsWith(`${id} `))).toHaveLength(1);
      }
      // A row is one line: its marks do not run on below it.
      expect(lines.indexOf("")).toBe(cultures.length + 1);
    }
  });

  it("shows the person's unit first and the other in brackets", () => {
    // 41 to 45 degC are 105.8 to 113 degF, by definition of the scale.
    expect(row("degC")).toMatch(/^yoghurt +41-45 \(105\.8-113\) +43 \(109\.4\) +48 \(118\.4\) +5 /);
    expect(row("degF")).toMatch(/^yoghurt +105\.8-113 \(41-45\)/);
  });

  it("says where the figures are from, marked where nobody knows", () => {
    const text = cultureTable(cultures, page).join("\n");
    expect(text).toContain("common practice, no source");
    expect(text).toContain("McGee, On Food and Cooking (2004)");
    expect(text).toContain("[2]");
  });
});
