import { describe, expect, it } from "vitest";
import {
  ageText,
  boilingText,
  checkedText,
  correctionRows,
  doubtRows,
  fitnessText,
  knownText,
  usedChecks,
} from "../../../src/report/wording/thermometers.ts";
import { plainWriting } from "../../../src/report/writing.ts";
import { sampleThermometers } from "../sample-kitchen.ts";

const writing = plainWriting("degC");
const { pen, jarLogger, bathLogger } = sampleThermometers;

describe("knownText", () => {
  it("names the checks the correction rests on, not those left out", () => {
    expect(knownText(jarLogger, writing)).toBe(
      "Checked in melting ice and in boiling water on 2026-02-15; last check 33 days ago.",
    );
    expect(usedChecks(pen).map(({ kind }) => kind)).toEqual(["ice"]);
    expect(knownText(pen, writing)).toBe(
      "Checked in melting ice on 2026-02-14; last check 34 days ago.",
    );
  });

  it("names a day once where neighbours share it, and each where they differ", () => {
    const [ice, boiling] = jarLogger.thermometer.checks;
    const checks = [{ ...ice!, date: "2026-01-02" }, boiling!];
    const thermometer = { ...jarLogger.thermometer, checks };
    expect(knownText({ ...jarLogger, thermometer }, writing)).toContain(
      "in melting ice on 2026-01-02 and in boiling water on 2026-02-15",
    );
  });

  it("says so where only the specification, or nothing, is known", () => {
    expect(knownText(bathLogger, writing)).toBe(
      "Not checked yet: known only by its specification, ±0.5 °C (±0.9 °F).",
    );
    const model = { ...bathLogger.model, from: "assumed", accuracy: 1 as never } as const;
    expect(knownText({ ...bathLogger, model }, writing)).toBe(
      "Not checked yet, and nothing is said about it: assumed good to ±1 °C (±1.8 °F).",
    );
  });

  it("says that no check counts where all were left out", () => {
    const questions = [{ check: 0, leftOut: true, code: "ice-too-warm", reading: 6 } as const];
    const thermometer = {
      ...bathLogger.thermometer,
      checks: pen.thermometer.checks.slice(0, 1),
    };
    expect(knownText({ ...bathLogger, thermometer, questions }, writing)).toContain(
      "No check of it counts yet: known only by its specification",
    );
  });
});

describe("correctionRows", () => {
  it("has one line where the correction is the same everywhere", () => {
    expect(correctionRows(pen, writing).map(({ at }) => at)).toContain("38 °C (100.4 °F)");
    expect(correctionRows(pen, writing).length).toBe(4);
    expect(correctionRows(bathLogger, writing)).toEqual([
      { at: null, text: "0.0 ± 0.6 °C (0.0 ± 1.1 °F)" },
    ]);
  });
});

describe("age", () => {
  it.each([
    [0, 0, "today"],
    [1, 0, "yesterday"],
    [34, 1, "34 days ago"],
    // Whole calendar months, as the notice of an old check counts them: never rounded up.
    [693, 22, "22 months ago"],
    [-3, -1, "dated in days to come"],
  ])("%d days, %d months: %s", (daysAgo, monthsAgo, text) => {
    expect(ageText({ daysAgo, monthsAgo })).toBe(text);
  });

  it("asks for another check after a year", () => {
    expect(checkedText({ checked: { date: "2024-01-01", daysAgo: 800, monthsAgo: 26 } })).toBe(
      "last check 26 months ago; thermometers drift, so check it again",
    );
    expect(checkedText({ checked: null })).toBeNull();
  });
});

describe("the thermometer command's sentences", () => {
  it("say where water boils and how that is known", () => {
    const point = { celsius: 95.21, standardUncertainty: 0.23, pressure: 850.7 };
    expect(boilingText({ ...point, how: "altitude" }, writing)).toBe(
      "water boils there at 95.21 ± 0.23 °C (203.38 ± 0.41 °F): air pressure 851 hPa, from the altitude, in the standard atmosphere",
    );
  });

  it.each([
    ["good", 0.09, "yes, because its doubt of ±0.14 °C (±0.25 °F) takes up 9 % of the window"],
    ["usable", 0.4, "just, because its doubt of ±0.14 °C (±0.25 °F) takes up 40 % of the window"],
    ["too coarse", Infinity, "no, because its doubt of ±0.14 °C (±0.25 °F) cannot fit a window"],
  ] as const)("say whether it will do: %s", (word, shareTaken, end) => {
    const fitness = { word, shareTaken, expanded: 0.14 };
    expect(fitnessText({ name: null, low: 36.5, high: 39.5, fitness }, writing)).toContain(
      `36.5 to 39.5 °C (97.7 to 103.1 °F): ${end}`,
    );
    expect(fitnessText({ name: "Kefir", low: 36.5, high: 39.5, fitness }, writing)).toContain(
      ", Kefir: ",
    );
  });

  it("give each source of doubt its size, leaving out what adds nothing", () => {
    const none = { source: "linearity", standardUncertainty: 0, from: "assumed" } as const;
    const doubts = { ...pen.doubts, parts: [...pen.doubts.parts, none] };
    expect(doubtRows({ doubts }, writing)).toEqual([
      { label: "its scale where no check reaches", text: "0.15 °C (0.27 °F), assumed" },
      {
        label: "how near an ice bath comes to the melting point",
        text: "0.05 °C (0.09 °F), assumed",
      },
    ]);
  });
});
