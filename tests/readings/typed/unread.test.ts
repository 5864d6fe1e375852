import { describe, expect, it } from "vitest";
import { problemText } from "../../../src/problem.ts";
import { shownText, unread } from "../../../src/readings/typed/unread.ts";

describe("shownText", () => {
  it("shows one short line without control characters", () => {
    expect(shownText(" 22:30\u001B[31m  41 ")).toBe("22:30?[31m 41");
    expect(shownText("x".repeat(400)).length).toBeLessThan(50);
  });
});

const sentence = (line: number | null) =>
  problemText(unread(line, "a temperature", "warm", "Type it again.").problem);

describe("unread", () => {
  it("names the line only where there is one", () => {
    expect(sentence(7)).toBe('Line 7: Expected a temperature, found "warm". Type it again.');
    expect(sentence(null)).toBe('Expected a temperature, found "warm". Type it again.');
  });
});
