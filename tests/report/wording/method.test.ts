import { expect, it } from "vitest";
import { endedHold, methodSteps, roomReach, untold } from "../../../src/report/wording/method.ts";

const all = methodSteps.map(({ text }) => text).join(" ");

it.each([
  "JCGM 100:2008",
  "JCGM 106:2012",
  "Hampel 1974",
  "Geyer 1992",
  "Newey and West 1987",
  "Theil 1950, Sen 1968",
  "Rasmussen and Williams 2006",
])("names the source %s", (source) => {
  expect(all).toContain(source);
});

it("owns up to what is this program's own assumption", () => {
  expect(all).toContain("this program’s own assumption");
});

it("says what one night cannot tell", () => {
  expect(roomReach).toMatch(/hardly shows how much of the room/);
  expect(endedHold).toMatch(/nothing in the readings tells/);
  expect(untold.join(" ")).toMatch(/Water stood in for the food/);
});
