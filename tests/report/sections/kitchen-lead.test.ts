import { expect, it } from "vitest";
import { kitchenLead, unreadNote } from "../../../src/report/sections/kitchen-lead.ts";
import { markupWriting } from "../../../src/report/writing.ts";
import { visibleText } from "../drawing.ts";
import { manyCultures, oneAppliance, sampleKitchen } from "../sample-kitchen.ts";

const writing = markupWriting("degC");
const lead = (analysis = sampleKitchen()): string =>
  visibleText(kitchenLead({ analysis, writing }).html);

const plain = (text: string): string => text.replaceAll(/ (?=[;.:,)])/g, "");

it("begins with which appliance is for which culture, and then answers appliance by appliance", () => {
  const text = plain(lead());
  expect(text).toMatch(/^In short All at the same time: Low long-hold milk culture in the adj/);
  expect(text).toContain(
    "Cooker with one warm program Holds Yoghurt, warm set: jars in water (99 %). Unproven Warm long-hold blend: jars in water (81 %); test once more. Not for Low long-hold milk culture. Adjustable cooker Holds Low",
  );
  expect(text).toContain("Holds Warm long-hold blend: at 41 °C (105.8 °F), straight in the basin");
});

it("names one change for an appliance, with what it should do, and says it was not tested", () => {
  const text = plain(lead());
  const box = text.slice(text.indexOf("Warming box"));
  expect(box).toContain(
    "Warming box Change Turn it to mark 4, jars on the rack as tested: should hold Yoghurt, warm set (&gt; 99 %), expected at 40.4 °C (104.7 °F). Could be changed for",
  );
  expect(text).toContain("A change named here was not tested: test it once with water");
  expect(text).toContain(
    "Test next: the warming box at mark 3, jars on the rack, for 36 h once it",
  );
});

it("says no fact twice: each culture once for each appliance, where something was tested", () => {
  for (const analysis of [sampleKitchen(), manyCultures()]) {
    const html = kitchenLead({ analysis, writing }).html;
    const blocks = html.split("<h3>").slice(1, 5).map(visibleText);
    for (const block of blocks) {
      for (const { name } of analysis.requirements) {
        const short = name.replace(/ \(.*/, "");
        // The last block is followed by the hints below the list, which name no culture.
        expect(block.split(short).length - 1, `${short} in ${block}`).toBe(1);
      }
    }
  }
});

it("counts the cultures an appliance is not for where they are too many to name", () => {
  const many = manyCultures();
  const more = many.requirements[5]!;
  const again = { ...more, culture: "own-33", name: "Own culture 33" };
  const requirements = [...many.requirements, again];
  const text = plain(lead({ ...many, requirements }));
  expect(text).toContain("test once more. Not for the other 5.");
  const box = oneAppliance("box");
  const missed = {
    ...box,
    requirements: Array.from({ length: 6 }, (_, at) => ({ ...more, culture: `own-${at}` })),
  };
  expect(plain(lead(missed))).toContain("Not for any of the 6.");
});

it("names cultures without a place together, with the reason once", () => {
  const text = plain(lead(manyCultures()));
  expect(text.match(/no place: no appliance here/g)!.length).toBe(1);
  expect(text).toContain("Own culture 24, Own culture 27, Own culture 30: no place:");
});

it("names appliances not tested yet, and those whose tests could not be read", () => {
  expect(lead()).toContain("Cupboard over the stove Not tested yet.");
  const bath = oneAppliance("bath");
  const unread = { ...bath, setUps: [], tests: bath.tests.slice(1) };
  expect(lead(unread)).toContain("Circulating bath Its test could not be read.");
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
