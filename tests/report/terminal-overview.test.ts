import { expect, it } from "vitest";
import { overview } from "../../src/report/terminal-overview.ts";
import { terminalWriting } from "../../src/report/writing.ts";
import { severalProbes } from "./sample-analysis.ts";

const lines = (width: number, colour = false): string[] =>
  overview({
    colour,
    ascii: false,
    width,
    writing: terminalWriting("degC", false),
    analysis: severalProbes(),
  });

it("lists each probe's verdicts with words, chances and cultures in columns", () => {
  expect(lines(80)).toEqual([
    "jar in night.csv",
    "  HOLDS                97 %  Yoghurt, warm set",
    "",
    "box in warming box, second shelf.csv",
    "  MISSES              < 1 %  Yoghurt, warm set: never warm enough",
    "  UNPROVEN  just under 95 %  Mesophilic culture: test again",
    "",
  ]);
});

it("keeps its columns in colour, and to the width", () => {
  // oxlint-disable-next-line no-control-regex
  const plain = lines(80, true).map((line) => line.replaceAll(/\u001b\[[\d;]*m/g, ""));
  expect(plain).toEqual(lines(80));
  for (const line of lines(44)) expect(line.length).toBeLessThanOrEqual(44);
});
