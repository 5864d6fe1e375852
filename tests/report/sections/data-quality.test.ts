import { expect, it } from "vitest";
import { notice } from "../../../src/notice.ts";
import { dataQualitySection } from "../../../src/report/sections/data-quality.ts";
import { markupWriting } from "../../../src/report/writing.ts";
import { visibleText } from "../drawing.ts";
import { holdsNight, unprovenNight } from "../sample-analysis.ts";

const writing = markupWriting("degC");

it("counts what was set aside, by reason, with the line it first stands on", () => {
  const text = visibleText(dataQualitySection(holdsNight(), writing).html);
  expect(text).toContain("1,249 of 1,260 rows were used; 11 were set aside");
  expect(text).toContain("a leap away and straight back 8 112");
  expect(text).toContain("a value by which the sensor says it failed 3 2041");
  expect(text).toContain("1 gap in the readings, the longest 35 min before line 3120");
});

it("names the probe of single cells, and says when all rows were used", () => {
  const night = holdsNight();
  const [file] = night.files;
  const readings = {
    ...file!.readings,
    rowsRead: 900,
    rowsUsed: 900,
    setAside: [],
    cellsSetAside: [{ probe: "<lid>", reason: "text-flag", count: 4, firstLine: 9 }] as const,
  };
  const { html } = dataQualitySection({ ...night, files: [{ ...file!, readings }] }, writing);
  expect(html).toContain("(cell of “&lt;lid&gt;”)");
  expect(visibleText(html)).toContain("900 of 900 rows were used: all of them.");
});

it("says each notice once, with its signs", () => {
  const night = unprovenNight();
  const again = { ...night, notices: [...night.notices, night.files[0]!.readings.notices[0]!] };
  const text = visibleText(dataQualitySection(again, writing).html);
  expect(text.match(/1 gap in the readings/g)!.length).toBe(1);
  expect(text).toContain("it was assumed good to ±1 °C");
  expect(night.notices).toContainEqual(notice("assumed-thermometer", { accuracy: 1 }));
});
