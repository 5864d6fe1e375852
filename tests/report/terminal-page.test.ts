import { expect, it } from "vitest";
import { chanceOf, coloured, labelled, mark, safe } from "../../src/report/terminal-page.ts";
import type { Page } from "../../src/report/terminal-page.ts";
import { terminalWriting } from "../../src/report/writing.ts";
import { missesNight } from "./sample-analysis.ts";

const analysis = missesNight();
const page = (more: Partial<Page> = {}): Page => ({
  colour: false,
  ascii: false,
  width: 40,
  writing: terminalWriting("degC", false),
  analysis,
  ...more,
});
const [verdict] = analysis.probes[0]!.verdicts;

it("marks a verdict with a word, and colours it only where asked", () => {
  expect(mark(verdict!)).toBe("MISSES");
  expect(coloured("x", verdict!, page())).toBe("x");
  // oxlint-disable-next-line no-control-regex
  expect(coloured("x", verdict!, page({ colour: true }))).toMatch(/^\u001b\[[\d;]+mx\u001b\[0m$/);
});

it("lines up text behind its label and lets no sign through that could do harm", () => {
  const lines = labelled("Do next", "word ".repeat(12).trim(), page());
  expect(lines[0]).toMatch(/^ {2}Do next {3}word/);
  for (const line of lines.slice(1)) expect(line).toMatch(/^ {12}word/);
  expect(safe("a\u001b[31m", page())).not.toContain("\u001b");
  expect(safe("38 °C", page({ ascii: true }))).toBe("38 degC");
});

it("gives the chance in whole per cent", () => {
  expect(chanceOf(verdict!, page())).toBe("<\u00a01\u00a0%");
});
