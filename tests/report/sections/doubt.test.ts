import { expect, it } from "vitest";
import { doubtSection } from "../../../src/report/sections/doubt.ts";
import { markupWriting } from "../../../src/report/writing.ts";
import { visibleText } from "../drawing.ts";
import { holdsNight, noHoldNight, severalProbes } from "../sample-analysis.ts";

const writing = markupWriting("degC");

it("lists each source with size, origin and meaning, largest first", () => {
  const text = visibleText(doubtSection(holdsNight(), writing)!.html);
  const order = ["one run to the next 0.30", "hours not tested 0.22", "thermometer 0.19"];
  const places = order.map((words) => text.indexOf(words));
  expect(places).not.toContain(-1);
  expect(places).toEqual(places.toSorted((a, b) => a - b));
  expect(text).toContain("0.19 °C (0.34 °F), measured. How far the thermometer may be off");
});

it("stands for the probes that have an answer, and for none where nothing held", () => {
  const { html } = doubtSection(severalProbes(), writing)!;
  const names = [...html.matchAll(/<h3>([^<]+)<\/h3>/g)].map(([, name]) => name);
  expect(names).toEqual(["“jar” in night.csv", "“box” in warming box, second shelf.csv"]);
  expect(doubtSection(noHoldNight(), writing)).toBeNull();
});
