import { describe, expect, it } from "vitest";
import { textFault } from "../../../src/kitchen/text/text-limits.ts";

// Constructed. That what passes can be parsed is tried in parse-kitchen.test.ts.

describe("textFault", () => {
  it.each<readonly [string, string, number]>([
    ["brackets in each other", `a: 1\nb: ${"[".repeat(51)}`, 2],
    ["keys on one line", `a: 1\n${"a: ".repeat(101)}`, 2],
    ["dashes on one line", `\n\n${"- ".repeat(20)}a`, 3],
    ["a deep step in", `a:\n${" ".repeat(101)}b: 1`, 2],
    ["a control character", "a: 1\nb: \u0007", 2],
    ["a control character in a comment", "a: 1\n# \u0007", 2],
    ["a lone carriage return", "a: 1\rb: 2", 1],
    ["a directive", "%TAG ! x\n", 1],
    ["the end of a document", "a: 1\n...\nb: 1\n", 2],
  ])("%s", (_, text, line) => {
    expect(textFault(text)?.line).toBe(line);
  });

  it.each<readonly [string, string]>([
    ["CRLF", "a: 1\r\nb: 2\r\n"],
    ["brackets behind each other", "a: [1]\n".repeat(1000)],
    ["many pairs in brackets", `a: {${"b: 1, ".repeat(1000)}}`],
    ["brackets in a quoted text and in comments", `a: "${"[".repeat(100)}" # ${"{".repeat(100)}`],
    ["a far comment", `a: 1\n${" ".repeat(300)}# note`],
    ["a tab inside a line", "a: 1\t# note"],
    ["any letters", "ü: 日本 🍯"],
  ])("nothing against %s", (_, text) => {
    expect(textFault(text)).toBeNull();
  });
});
