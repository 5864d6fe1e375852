import { describe, expect, it } from "vitest";
import { readCheckOptions } from "../../src/input/check-options.ts";
import { checkRequest } from "../../src/input/check-request.ts";
import type { TypedOptions } from "../../src/input/typed-options.ts";
import { cultures } from "../../src/culture/catalogue.ts";
import { problemText } from "../../src/problem.ts";

const requestOf = (typed: TypedOptions) => {
  const options = readCheckOptions(typed);
  return options.ok ? checkRequest(options.value, "1.2.3") : options;
};

const valueOf = (typed: TypedOptions) => {
  const request = requestOf(typed);
  if (!request.ok) throw new Error(problemText(request.problem));
  return request.value;
};

const textOf = (typed: TypedOptions): string => {
  const request = requestOf(typed);
  return request.ok ? "" : problemText(request.problem);
};

const window: TypedOptions = { low: ["37"], high: ["39"], hours: ["36"] };

describe("checkRequest", () => {
  it("makes one requirement of a typed window", () => {
    const { requirements } = valueOf({ ...window, ceiling: ["43"], share: ["0.9"] });
    expect(requirements).toEqual([
      { culture: "window", name: "", low: 37, high: 39, ceiling: 43, hours: 36, share: 0.9 },
    ]);
  });

  it("takes each culture once, as the catalogue has it", () => {
    const first = cultures[0];
    if (first === undefined) throw new Error("the catalogue is empty");
    const { requirements } = valueOf({ culture: [first.id, "kefir", first.id] });
    expect(requirements.map(({ culture }) => culture)).toEqual([first.id, "kefir"]);
    expect(requirements[0]).toMatchObject({
      name: first.name,
      low: first.low,
      ceiling: first.ceiling,
      share: 0.95,
      growth: first.growth,
    });
  });

  it("takes a +-A specification as rectangular: u = A / sqrt(3) (JCGM 100, 4.3.7)", () => {
    // 0.5 / sqrt(3) = 0.288675..., to the digits written here.
    const { thermometer } = valueOf({ ...window, thermometerAccuracy: ["0.5"] });
    expect(thermometer?.standardUncertainty).toBeCloseTo(0.288675, 6);
    expect(thermometer).toMatchObject({ correction: 0, accuracy: 0.5, from: "stated" });
  });

  it("takes a correction as it is, and says nothing where nothing was said", () => {
    const said = valueOf({ ...window, correction: ["0.2"], correctionUncertainty: ["0.1"] });
    expect(said.thermometer).toMatchObject({ correction: 0.2, standardUncertainty: 0.1 });
    const silent = valueOf(window);
    expect(silent).toMatchObject({ thermometer: null, room: null, runToRun: null, reading: {} });
    expect(valueOf({ ...window, runToRun: ["0"] }).runToRun).toBe(0);
  });

  it("shows the unit the window was typed in", () => {
    expect(valueOf(window).shownUnit).toBe("degC");
    expect(valueOf({ ...window, low: ["98.6F"] }).shownUnit).toBe("degF");
    expect(valueOf({ ...window, unit: ["F"] }).shownUnit).toBe("degC");
    expect(valueOf({ culture: ["kefir"], unit: ["F"] }).shownUnit).toBe("degF");
  });

  it("hands on what was said about the file", () => {
    const { reading } = valueOf({
      ...window,
      column: ["Jar"],
      probe: ["Jar=bath"],
      unit: ["F"],
      dateOrder: ["mdy"],
      decimal: ["point"],
      interval: ["5s"],
    });
    expect(reading).toEqual({
      columns: ["Jar"],
      roles: new Map([["Jar", "bath"]]),
      unit: "degF",
      dateOrder: "month-first",
      decimal: ".",
      intervalSeconds: 5,
    });
  });

  it.each([
    [{ ...window, low: ["39"], high: ["37"] }, "Expected --low below --high"],
    [{ ...window, high: ["37"] }, "Expected --low below --high"],
    [{ ...window, ceiling: ["38"] }, "Raise --ceiling or lower --high"],
    [{ culture: ["kefri"] }, 'Did you mean "kefir"?'],
  ] satisfies readonly (readonly [TypedOptions, string])[])("refuses %j", (typed, text) => {
    expect(textOf(typed)).toContain(text);
  });
});
