import { expect, it } from "vitest";
import { provenanceSection } from "../../../src/report/sections/provenance.ts";
import { markupWriting } from "../../../src/report/writing.ts";
import { visibleText } from "../drawing.ts";
import { severalProbes, unprovenNight } from "../sample-analysis.ts";

const writing = markupWriting("degC");

it("names each file with its hash, rows, step and how it was read", () => {
  const text = visibleText(provenanceSection(severalProbes(), writing).html);
  expect(text).toContain(`night.csv SHA-256 ${"1".repeat(64)} Rows 1,331 read, 1,320 used`);
  expect(text).toContain(`SHA-256 ${"2".repeat(64)}`);
  expect(text).toContain("First reading 2026-03-14 21:37 by the logger’s clock Usual step 30 s");
  expect(text).toContain("UTF-8, fields parted by comma, decimal point, date and time, °C");
});

it("gives the options in force, each requirement once", () => {
  const text = visibleText(provenanceSection(severalProbes(), writing).html);
  expect(text.match(/Asked for/g)!.length).toBe(2);
  expect(text).toContain(
    "correction −0.3 °C (−0.5 °F), standard uncertainty 0.19 °C (0.34 °F), measured",
  );
  expect(visibleText(provenanceSection(unprovenNight(), writing).html)).toContain(
    "no correction, specification ±1 °C (±1.8 °F), standard uncertainty 0.6 °C (1.0 °F), assumed",
  );
});
