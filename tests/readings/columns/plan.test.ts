import { describe, expect, it } from "vitest";
import { makePlan } from "../../../src/readings/columns/plan.ts";
import type { ReadingOptions } from "../../../src/readings/readings-file.ts";

const plan = (text: string, options: ReadingOptions = {}) => {
  const outcome = makePlan("f.csv", text, options);
  return outcome.ok ? outcome.value : outcome.problem;
};

describe("makePlan", () => {
  it("decides delimiter, decimal sign, times, probes and what is left alone", () => {
    const text = "Zeit;Temperatur °C;Feuchte %\n22:00;21,5;45\n22:30;41,2;44\n";
    expect(plan(text)).toMatchObject({
      delimiter: ";",
      decimal: ",",
      when: { columns: [0] },
      probes: [{ column: 1, unit: "degC", heading: "Temperatur °C" }],
      ignored: ["Feuchte %"],
    });
  });

  it.each([
    ["a,b\n1,x\n2,y\n3,z\n", {}, "no-temperature-column", 1],
    ["No.,Temp\n1,21.5\n2,41.2\n3,41\n", {}, "no-time-column", 1],
    ["22:00,45.1,21.5\n22:30,44.2,41.2\n23:00,40,41\n", {}, "temperature-column-undecidable", 1],
    ['time,temp\n22:00,"1,234"\n22:30,"1,235"\n', {}, "decimal-undecidable", 2],
    ["time,temp\n22:00,21.5\n22:30,41.2\n", { columns: ["jar"] }, "column-unknown", null],
  ] as const)("%j asks: %s", (text, options, code, line) => {
    const found = plan(text, options);
    expect(found).toMatchObject({ code });
    if (line !== null) expect(found).toMatchObject({ facts: { line } });
  });
});
