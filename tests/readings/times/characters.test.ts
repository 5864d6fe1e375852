import { describe, expect, it } from "vitest";
import {
  halfEnd,
  isDigit,
  isLetter,
  isMark,
  isSpace,
} from "../../../src/readings/times/characters.ts";

const all = (text: string, test: (code: number) => boolean): boolean =>
  [...text].every((letter) => test(letter.charCodeAt(0)));

describe("kinds of character", () => {
  it("holds each character in one kind at most", () => {
    const kinds = [isDigit, isSpace, isMark, isLetter];
    for (let code = 0; code < 0x3000; code++)
      expect(kinds.filter((kind) => kind(code)).length).toBeLessThanOrEqual(1);
  });
  it("knows what stamps are written with", () => {
    expect(all("0123456789", isDigit)).toBe(true);
    expect(all(" \t_\u00a0\u202f\u2009", isSpace)).toBe(true);
    expect(all("+,-./:", isMark)).toBe(true);
    expect(all("azAZéüłñ", isLetter)).toBe(true);
    expect(
      all(
        ";!()[]@#\u2212",
        (code) => !isDigit(code) && !isSpace(code) && !isMark(code) && !isLetter(code),
      ),
    ).toBe(true);
  });
});

describe("halfEnd", () => {
  it.each(["AM", "pm", "a.m.", "P.M.", "p.m", "p. m.", "a.\u00a0m.", "PM."])(
    "%s is a half",
    (text) => {
      expect(halfEnd(text, 0)).toBe(text.length);
      expect(halfEnd(`10:30${text} x`, 5)).toBe(5 + text.length);
    },
  );
  it.each(["amber", "Apr", "p", "a m x", "mp", ""])("%s is none", (text) =>
    expect(halfEnd(text, 0)).toBe(-1),
  );
});
