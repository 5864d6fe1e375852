import { expect, it } from "vitest";
import { judgedProbes, leadBlock, probeTitle } from "../../../src/report/sections/lead.ts";
import { markupWriting } from "../../../src/report/writing.ts";
import { visibleText } from "../drawing.ts";
import { analysisOf, missesNight, probe, severalProbes } from "../sample-analysis.ts";
import { requirement, unprovenNight, verdict } from "../sample-analysis.ts";

const writing = markupWriting("degC");
const lead = (analysis = severalProbes()): string => leadBlock(analysis, writing).html;

it("says in a sentence for each probe what it holds, what not and what would settle it", () => {
  const items = lead()
    .match(/<li>[\s\S]*?<\/li>/g)!
    .map(visibleText);
  expect(items).toEqual([
    "night.csv, jar: holds for Yoghurt, warm set (97 %).",
    "warming box, second shelf.csv, box: not proven for Mesophilic culture (just under 95 %; test again); never warm enough for Yoghurt, warm set (&lt; 1 %).",
  ]);
});

it("names cultures of the same finding together", () => {
  const [first] = severalProbes().probes;
  const more = verdict("holds", 0.99, requirement("kefir", 38, 43, null, 24), []);
  const analysis = analysisOf([{ ...first!, verdicts: [...first!.verdicts, more] }]);
  expect(visibleText(lead(analysis))).toContain(
    "jar: holds for Yoghurt, warm set (97 %), Kefir (99 %).",
  );
});

it("sets probes against cultures, each cell with a word, a chance and what is amiss", () => {
  const html = lead();
  const rows = html.match(/<tr[\s\S]*?<\/tr>/g)!.map(visibleText);
  expect(rows[0]).toContain("Yoghurt, warm set 38 to 43 °C (100.4 to 109.4 °F), 24 h");
  expect(rows[1]).toBe("night.csv, jar Yoghurt, warm set Holds 97 % not asked");
  expect(rows[2]).toContain("Yoghurt, warm set Misses &lt; 1 % never warm enough");
  expect(rows[2]).toContain("Mesophilic culture Unproven just under 95 % test again");
});

it("keeps the table's roles where it is shown as a list", () => {
  const html = lead();
  for (const role of ["table", "rowgroup", "row", "columnheader", "rowheader", "cell"]) {
    expect(html).toContain(`role="${role}"`);
  }
  expect(html.match(/scope="col"/g)!.length).toBe(3);
  expect(html.match(/scope="row"/g)!.length).toBe(2);
});

it("lists cultures under each probe where they have no room beside each other", () => {
  const [first] = severalProbes().probes;
  const many = [20, 25, 30, 35, 40].map((low) =>
    verdict("misses", 0, requirement("window", low, low + 2, null, 24), []),
  );
  expect(lead(analysisOf([{ ...first!, verdicts: many }]))).toContain('class="matrix listed"');
  expect(lead()).toContain('class="matrix"');
});

it("judges probes with a verdict, and names the file only among several", () => {
  expect(judgedProbes(severalProbes()).map(({ series }) => series.name)).toEqual(["jar", "box"]);
  const alone = missesNight();
  expect(probeTitle(alone.probes[0]!, alone).html).toBe("food");
  expect(judgedProbes(analysisOf([probe({ shape: sh })]))).toEqual([]);
  expect(visibleText(lead(unprovenNight()))).toContain("not proven for your window");
});

const sh = { level: 40, swing: 0, periodMinutes: 9, perHour: 0, stepSeconds: 600, hours: 5 };
