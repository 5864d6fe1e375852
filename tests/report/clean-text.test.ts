import { expect, it } from "vitest";
import { asciiText, cleanText } from "../../src/report/clean-text.ts";

it("takes away what steers a terminal or reorders a line, and nothing else", () => {
  expect(cleanText("a\u001b[31mb\u0007c\u202ed\u009be\u2066f")).toBe("a�[31mb�c�d�e�f");
  expect(cleanText("one\r\ntwo\tthree")).toBe("one two three");
  expect(cleanText("Küche 温度 °C 😀")).toBe("Küche 温度 °C 😀");
});

it("writes signs in ASCII and marks what has none", () => {
  expect(asciiText("38 °C ± 1, “dial’s” −2 Küche")).toBe('38 degC +- 1, "dial\'s" -2 K?che');
});
