import { describe, expect, it } from "vitest";
import { parseCommandLine } from "../../src/cli/command-line.ts";
import { commandTable } from "../../src/cli/command-table.ts";
import { cultures } from "../../src/culture/catalogue.ts";
import { problemText } from "../../src/problem.ts";

const parse = (...line: string[]) => parseCommandLine(line, "1.2.3", commandTable);

describe("parseCommandLine", () => {
  it("collects every value of every option, negative ones too", () => {
    expect(
      parse("check", "a.csv", "b.csv", "--low", "-3", "--probe", "A=food", "--probe", "B=bath"),
    ).toMatchObject({
      kind: "command",
      entry: { name: "check" },
      words: ["a.csv", "b.csv"],
      options: { low: ["-3"], probe: ["A=food", "B=bath"] },
    });
    expect(parse("check", "a", "--json", "--strict")).toMatchObject({
      options: { json: true, strict: true },
    });
  });

  it("gives the demo a folder", () => {
    expect(parse("demo")).toMatchObject({ entry: { name: "demo" }, words: ["holdband-demo"] });
    expect(parse("demo", "here")).toMatchObject({ words: ["here"] });
  });

  it("answers --version and --help as text with a real example", () => {
    expect(parse("--version")).toEqual({ kind: "text", text: "1.2.3" });
    const each = commandTable.map(({ name }) => [name, "--help"]);
    for (const line of [[], ["--help"], ["help", "check"], ...each]) {
      const parsed = parse(...line);
      expect(parsed.kind === "text" && parsed.text).toMatch(/Example:\n {2}holdband [a-z]+/);
    }
  });

  it("names every culture, since one must be typed", () => {
    const parsed = parse("check", "--help");
    for (const { id } of cultures) expect(parsed.kind === "text" && parsed.text).toContain(id);
  });

  it.each([
    [["check"], "Expected at least one logger's file, found none."],
    [["rename"], "Expected a section, the name now and the new name, found none."],
    [["rename", "appliance", "box"], "the new name, found no new."],
    [["chekc"], 'found chekc. Did you mean check? "holdband --help"'],
    [["check", "a", "--lo", "3"], 'found --lo. Did you mean --low? "holdband check --help"'],
    [["check", "a", "--low"], "Expected a value after the option, found --low alone."],
    [["demo", "a", "b"], "Expected nothing more after the folder"],
  ])("turns %j into one sentence", (line, text) => {
    const parsed = parse(...line);
    expect(parsed.kind === "problem" && problemText(parsed.problem)).toContain(text);
  });
});
