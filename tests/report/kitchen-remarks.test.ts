import { expect, it } from "vitest";
import {
  missingLines,
  noteLines,
  parted,
  questionLines,
  unreadLines,
} from "../../src/report/kitchen-remarks.ts";
import { flat, screenOf } from "./advice-screen.ts";
import { sampleKitchen, untestedKitchen } from "./sample-kitchen.ts";

it("names tests that could not be read, and why", () => {
  expect(flat(unreadLines(screenOf(sampleKitchen())))).toContain(
    "Not read Circulating bath, 42 °C (107.6 °F), Jars in water (bath-42-jars): Expected a column",
  );
});

it("asks about doubtful checks, and notes what else was seen", () => {
  expect(flat(questionLines(screenOf(sampleKitchen())))).toContain(
    "Check Pen thermometer: In boiling",
  );
  expect(flat(noteLines(screenOf(sampleKitchen())))).toContain("checked 14 months ago");
});

it("is silent where there is nothing to remark", () => {
  const screen = screenOf(untestedKitchen());
  expect([...unreadLines(screen), ...questionLines(screen), ...noteLines(screen)]).toEqual([]);
});

it("gives what is missing a command in a line of its own", () => {
  expect(missingLines(screenOf(sampleKitchen()))).toEqual([]);
  const lines = missingLines(screenOf(sampleKitchen({ requirements: [] })));
  expect(lines.at(-1)).toBe("  holdband culture reuteri");
  expect(lines[0]).toMatch(/^No culture in this kitchen yet/);
});

it("parts blocks by one empty line, those without lines left out", () => {
  expect(parted([[], ["a", "b"], [], ["c"]])).toEqual(["a", "b", "", "c"]);
  expect(parted([])).toEqual([]);
});
