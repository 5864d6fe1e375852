import { expect, it } from "vitest";
import { kitchenLead, unreadNote } from "../../../src/report/sections/kitchen-lead.ts";
import { markupWriting } from "../../../src/report/writing.ts";
import { visibleText } from "../drawing.ts";
import { manyCultures, oneAppliance, sampleKitchen } from "../sample-kitchen.ts";

const writing = markupWriting("degC");
const lead = (analysis = sampleKitchen()): string =>
  visibleText(kitchenLead({ analysis, writing })!.html);

it("says for each set-up, under its appliance, what it holds, what is open and what it misses", () => {
  const text = lead().replaceAll(/ (?=[;.:])/g, "");
  expect(text).toMatch(
    /^Cooker with one warm program Jars in water: holds for Yoghurt, warm set \(99 %\); not proven for Warm long-hold blend \(81 %; test once more\); 1\.8 °C \(3\.2 °F\) too warm for Low long-hold milk culture \(&lt; 1 %\)\./,
  );
  expect(text).toContain("Adjustable cooker 38 °C (100.4 °F), Jars in water: holds for Low");
  expect(text).toContain("41 °C (105.8 °F), Straight in the basin: holds for Warm");
});

it("counts the misses where there are too many cultures to name them", () => {
  const text = lead(manyCultures()).replaceAll(/ (?=[;.:])/g, "");
  expect(text).toMatch(
    /^Cooker with one warm program Jars in water: holds for Yoghurt, warm set \(99 %\); not proven for Warm long-hold blend \(81 %; test once more\); misses the other 4\./,
  );
  const box = oneAppliance("box");
  const [setUp] = box.setUps;
  const missed = manyCultures().setUps[0]!.verdicts.filter(({ verdict }) => verdict === "misses");
  const five = { ...setUp!, verdicts: [...missed, missed[0]!] };
  expect(lead({ ...box, setUps: [five] })).toContain("misses all 5");
});

it("names appliances not tested yet, and those whose tests could not be read", () => {
  expect(lead()).toMatch(/Cupboard over the stove : not tested yet\.$/);
  const bath = oneAppliance("bath");
  const unread = { ...bath, setUps: [], tests: bath.tests.slice(1) };
  expect(lead(unread)).toBe("Circulating bath : its test could not be read.");
});

it("says what to do where there is nothing to report on", () => {
  expect(lead(oneAppliance("cupboard"))).toContain("leave a logger in it overnight");
});

it("says so where no culture is kept", () => {
  const box = oneAppliance("box");
  const [setUp] = box.setUps;
  const without = { ...box, setUps: [{ ...setUp!, verdicts: [] }] };
  expect(lead(without)).toContain("no culture is kept to ask about");
});

it("gives each test that could not be read with its problem's sentence, and nothing where all were", () => {
  const note = visibleText(unreadNote({ analysis: sampleKitchen(), writing })!.html);
  expect(note).toContain("1 test could not be read and is left out of every answer here.");
  expect(note).toContain("bath-42-jars): Expected a column of temperatures, found none");
  expect(unreadNote({ analysis: oneAppliance("box"), writing })).toBeNull();
});
