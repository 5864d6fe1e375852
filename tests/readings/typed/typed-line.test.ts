import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { problemText } from "../../../src/problem.ts";
import { isBlankLine, readTypedLine } from "../../../src/readings/typed/typed-line.ts";

const valuesOf = (typed: string, probes: readonly string[] = ["Jar"]) => {
  const read = readTypedLine(typed, probes);
  if (!read.ok) throw new Error(problemText(read.problem));
  return read.value;
};
const refusal = (
  typed: string,
  probes: readonly string[] = ["Jar"],
  line: number | null = null,
) => {
  const read = readTypedLine(typed, probes, line);
  if (read.ok) throw new Error(`read as ${JSON.stringify(read.value)}`);
  return problemText(read.problem);
};
const value = (digits: string, unit: "degC" | "degF" | null = null) => ({ digits, unit });

describe("readTypedLine", () => {
  it.each([
    ["22:30 41.2", value("41.2")],
    ["22:30  41,2", value("41.2")],
    ["22:30\t41.2", value("41.2")],
    ["22:30; 41,2", value("41.2")],
    ["22:30, 41.2", value("41.2")],
    ["10:30 pm 105.8F", value("105.8", "degF")],
    ["10:30 pm 105.8 °F", value("105.8", "degF")],
    ["10:30pm 41.2C", value("41.2", "degC")],
    ["22h30 41.2 c", value("41.2", "degC")],
    ["now 41.2", value("41.2")],
    ["+1h 41", value("41")],
  ])("%s", (typed, expected) => {
    expect(valuesOf(typed).values).toEqual([expected]);
  });

  it("reads several probes in their order, with a dash for one not taken", () => {
    const probes = ["Jar", "Bath", "Kitchen"];
    expect(valuesOf("22:30 41.2 - 19,5 C", probes).values).toEqual([
      value("41.2"),
      null,
      value("19.5", "degC"),
    ]);
  });

  it("keeps the comment and the mark of what is right although odd", () => {
    expect(valuesOf("22:30 41.2 # lid  opened")).toMatchObject({
      comment: "lid opened",
      confirmed: false,
    });
    expect(valuesOf("22:30 88.0 ! # steam")).toMatchObject({ comment: "steam", confirmed: true });
    expect(valuesOf("22:30 88!#").comment).toBeNull();
  });

  it.each([
    ["22:30", "no temperature"],
    ["22:30 41.2 40.9", "one temperature after the time"],
    ["22:30 warm", "a temperature such as 41.2"],
    ["22:30 41.2.1", "a temperature such as 41.2"],
    ["22:30 -", "at least one temperature"],
    ["22:30,41.2", "22:30 41.2"],
    ["22.30 41.2", "Write 22:30."],
  ])("%s is refused, saying %s", (typed, words) => {
    expect(refusal(typed)).toContain(words);
  });

  it("names the probes that are missed and the line they are missed in", () => {
    const text = refusal("22:30 41.2", ["Jar", "Bath"], 3);
    expect(text).toContain("Line 3: Expected 2 temperatures after the time (Jar, Bath)");
    expect(text).toContain("22:30 41.2 40.2, with - for one that was not taken");
  });

  it("reads or refuses with a sentence, whatever is typed", () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 60, unit: "binary" }), (typed) => {
        const read = readTypedLine(typed, ["Jar"]);
        if (read.ok) expect(Number.isFinite(Number(read.value.values[0]?.digits))).toBe(true);
        else expect(problemText(read.problem)).toMatch(/^Expected .*found .*\.$/u);
      }),
      { numRuns: 3000 },
    );
  });
});

describe("isBlankLine", () => {
  it("passes over blanks and comments alone", () => {
    expect(["", "  ", "# lid", " \t# x", "22:30 41"].map(isBlankLine)).toEqual([
      true,
      true,
      true,
      true,
      false,
    ]);
  });
});
