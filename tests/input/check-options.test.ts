import { describe, expect, it } from "vitest";
import { readCheckOptions } from "../../src/input/check-options.ts";
import type { TypedOptions } from "../../src/input/typed-options.ts";
import { problemText } from "../../src/problem.ts";

const window: TypedOptions = { low: ["37"], high: ["39"], hours: ["36"] };

const valueOf = (typed: TypedOptions) => {
  const read = readCheckOptions(typed);
  if (!read.ok) throw new Error(problemText(read.problem));
  return read.value;
};

const textOf = (typed: TypedOptions): string => {
  const read = readCheckOptions(typed);
  return read.ok ? "" : problemText(read.problem);
};

describe("readCheckOptions", () => {
  it("reads every option as a quantity", () => {
    const read = valueOf({
      ...window,
      ceiling: ["109.4F"],
      share: ["90%"],
      confidence: ["0.9"],
      correction: ["-0.9F"],
      correctionUncertainty: ["0.1"],
      room: ["63..77F"],
      runToRun: ["0"],
      probe: ["Jar=A=food", "Basin=BATH"],
      column: ["Jar"],
      unit: ["°F"],
      dateOrder: ["dmy"],
      decimal: ["comma"],
      interval: ["1:00:00"],
      report: ["x.html"],
      strict: true,
    });
    expect(read.ceiling?.celsius).toBeCloseTo(43, 10);
    expect(read.correction).toBeCloseTo(-0.5, 12);
    expect(read.room?.high.celsius).toBeCloseTo(25, 10);
    expect(read).toMatchObject({
      share: 0.9,
      hours: 36,
      runToRun: 0,
      probe: [
        ["Jar=A", "food"],
        ["Basin", "bath"],
      ],
      unit: "degF",
      dateOrder: "day-first",
      decimal: ",",
      interval: 3600,
      strict: true,
      json: false,
    });
  });

  it.each([
    [{ low: ["warm"] }, "--low expects a temperature between -40 and 200 degC, such as 38"],
    [{ low: [""] }, 'found ""'],
    [{ high: ["999"] }, "--high expects a temperature between -40 and 200 degC"],
    [{ hours: ["0"] }, "--hours expects a time above 0 and up to 240 hours, such as 36"],
    [{ hours: ["-3"] }, "--hours expects"],
    [{ share: ["95"] }, "--share expects a part of the time"],
    [{ confidence: ["1"] }, "--confidence expects a probability"],
    [{ thermometerAccuracy: ["-1"] }, "--thermometer-accuracy expects a half-width"],
    [{ runToRun: ["lots"] }, "--run-to-run expects a standard deviation"],
    [
      { room: ["25..17"] },
      "--room expects two temperatures of a room (at most 60 degC), the lower first",
    ],
    [{ probe: ["Jar=food", "Basin=pot"] }, 'Basin=bath or Kitchen=room, found "Basin=pot"'],
    [{ probe: ["=food"] }, "--probe expects"],
    [{ unit: ["K"] }, "--unit expects C or F"],
    [{ unit: ["constructor"] }, "--unit expects C or F"],
    [{ dateOrder: ["ymd"] }, "--date-order expects day-first or month-first"],
    [{ decimal: ["dot"] }, "--decimal expects comma or point"],
    [
      { interval: ["5"] },
      "--interval expects a time between two readings with its unit, such as 5s",
    ],
    [{ interval: ["0s"] }, "--interval expects"],
    [{ report: [""] }, "--report expects a file's name"],
  ] satisfies readonly (readonly [TypedOptions, string])[])("refuses %j", (typed, text) => {
    expect(textOf({ ...window, ...typed })).toContain(text);
  });

  it.each([
    [{ ...window, culture: ["kefir"] }, "--culture and --low cannot go together"],
    [{ culture: ["kefir"], hours: ["3"] }, "--culture and --hours cannot go together"],
    [{ culture: ["kefir"], ceiling: ["50"] }, "--culture and --ceiling cannot go together"],
    [
      {
        ...window,
        correction: ["0.1"],
        correctionUncertainty: ["0.1"],
        thermometerAccuracy: ["1"],
      },
      "--correction and --thermometer-accuracy cannot go together",
    ],
    [{ ...window, correction: ["0.1"] }, "--correction-uncertainty is needed"],
    [{ ...window, correctionUncertainty: ["0.1"] }, "--correction is needed"],
    [{ ...window, low: ["37", "38"] }, "--low 37 and --low 38 cannot go together"],
    [{ ...window, probe: ["Jar=food", "Jar=bath"] }, "a probe sat in one place"],
    [{ low: ["37"], hours: ["3"] }, "--high is needed"],
    [{ high: ["37"], hours: ["3"] }, "--low is needed"],
    [{ low: ["37"], high: ["39"] }, "--hours is needed"],
    [{ hours: ["3"] }, "--low is needed"],
    [{ ceiling: ["43"] }, "--low is needed"],
    [{}, "--culture ID, or --low, --high and --hours is needed"],
  ] satisfies readonly (readonly [TypedOptions, string])[])(
    "names what clashes or lacks in %j",
    (typed, text) => {
      expect(textOf(typed)).toContain(text);
    },
  );

  it("lets the same value be said twice", () => {
    expect(valueOf({ ...window, low: ["37", "37"] }).low?.celsius).toBe(37);
  });
});
