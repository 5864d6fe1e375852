import { describe, expect, it } from "vitest";
import { problemText } from "../../../src/problem.ts";
import { probeHeadings } from "../../../src/readings/typed/probe-heading.ts";

describe("probeHeadings", () => {
  it.each(["Jar", "Jar 2", "Bath", "Kitchen", "Glas hinten", "Rack, upper jar", "Topf", "T1"])(
    "takes %s",
    (name) => {
      expect(probeHeadings([name]).ok).toBe(true);
    },
  );

  it.each([
    "",
    "Max",
    "Humidity %",
    "Setpoint",
    'a"b',
    "Jar\n2",
    " Jar",
    "x".repeat(50),
    "Jar (°F)",
  ])("refuses %j, which would not read back as itself", (name) => {
    const checked = probeHeadings([name]);
    expect(checked.ok).toBe(false);
    if (!checked.ok) expect(problemText(checked.problem)).toContain("such as Jar");
  });

  it("refuses a name given twice, in any case", () => {
    expect(probeHeadings(["Jar", "jar"]).ok).toBe(false);
  });
});
