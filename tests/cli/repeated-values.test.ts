import { describe, expect, it } from "vitest";
import { spreadRepeated } from "../../src/cli/repeated-values.ts";

const options = [
  ["g", "--ice <temperatures...>", ""],
  ["g", "--boiling <temperatures...>", ""],
  ["g", "--date <day>", ""],
] as const;

describe("spreadRepeated", () => {
  it.each([
    ["--ice 0.3 -0.2C -,1 pen", "--ice=0.3 --ice=-0.2C --ice=-,1 pen"],
    [
      "pen --ice 0.3 --boiling 95 95.1 --date 2026",
      "pen --ice=0.3 --boiling=95 --boiling=95.1 --date 2026",
    ],
    ["--ice=0.3 0.2 --ice 0.1", "--ice=0.3 --ice=0.2 --ice=0.1"],
    ["--ice cold 0.2", "--ice=cold --ice=0.2"],
    ["--ice", "--ice"],
    ["--date 1 2", "--date 1 2"],
    ["--ice 1 x 2", "--ice=1 x 2"],
    ["", ""],
  ])("writes %j as %j", (line, spread) => {
    expect(spreadRepeated(line.split(" "), options).join(" ")).toBe(spread);
  });
});
