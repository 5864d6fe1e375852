import { expect, it } from "vitest";
import {
  everydayName,
  sentence,
  theEverydayName,
} from "../../../src/report/wording/everyday-names.ts";

it("writes everyday names small inside a sentence, with an article where one is due", () => {
  expect(theEverydayName("Adjustable cooker")).toBe("the adjustable cooker");
  expect(theEverydayName("My cooker")).toBe("my cooker");
  expect(everydayName("Jars in water")).toBe("jars in water");
});

it("leaves whatever may be somebody's name, and whatever is no word, as it was written", () => {
  for (const name of ["Anna's box", "Wärmeschrank", "GN 1/2", "<b>x</b>", ""]) {
    expect(everydayName(name)).toBe(name);
    expect(theEverydayName(name)).toBe(name);
  }
});

it("begins a sentence large, but changes no sign of a name", () => {
  expect(sentence("set it to 38")).toBe("Set it to 38.");
  expect(sentence("<script> cannot hold this")).toBe("<script> cannot hold this.");
});
