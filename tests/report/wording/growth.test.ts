import { describe, expect, it } from "vitest";
import type { OrganismGrowth } from "../../../src/culture/culture-growth.ts";
import type { FigureSource, GrowthLimits } from "../../../src/culture/culture.ts";
import * as organisms from "../../../src/culture/organisms.ts";
import { celsius } from "../../../src/quantity.ts";
import * as wording from "../../../src/report/wording/growth.ts";
import { plainWriting } from "../../../src/report/writing.ts";

const writing = plainWriting("degC");
const { thermophilus, bulgaricus } = organisms;

const grown = (more: Partial<OrganismGrowth> = {}): OrganismGrowth => ({
  organism: "Streptococcus thermophilus",
  meanRate: 0.967,
  equivalentHours: 10.25,
  equivalentHoursInAll: 10.5,
  lostToWarmUp: 0.12,
  lostToDisturbances: 0.01,
  limits: thermophilus,
  ...more,
});

const line = (rates: readonly number[], missing = 0): string | null =>
  wording.cultureLine(
    {
      culture: "yoghurt",
      organisms: rates.map((meanRate) => grown({ meanRate })),
      notModelled: Array.from({ length: missing }, () => ({
        organism: "Lactobacillus gasseri",
        because: "limit not known" as const,
      })),
    },
    writing,
  );

const at = (source: FigureSource) => ({ celsius: celsius(30), source });

describe("organismText", () => {
  it("tells rate, hours and costs", () => {
    expect(wording.organismText(grown(), writing)).toBe(
      "97 %, 10 h 15 min; warm-up cost 12 %; disturbances cost 1 %",
    );
  });

  it.each([
    [{ lostToWarmUp: null, lostToDisturbances: 0 }, "97 %, 10 h 15 min"],
    [{ lostToWarmUp: 0.004, lostToDisturbances: 0.0049 }, "97 %, 10 h 15 min"],
    [{ lostToWarmUp: -0.02, lostToDisturbances: 0 }, "97 %, 10 h 15 min; warm-up gained 2 %"],
    [
      { lostToWarmUp: -3, lostToDisturbances: 0 },
      "97 %, 10 h 15 min; warm-up gave more than the hold",
    ],
    [{ meanRate: 0, lostToWarmUp: null }, "none; the hold lay outside its limits"],
    [
      { meanRate: 0.9991, lostToWarmUp: null, lostToDisturbances: 0.006 },
      "more than 99 %, 10 h 15 min; disturbances cost less than 1 %",
    ],
  ])("%j reads %s", (more, text) => {
    expect(wording.organismText(grown(more), writing)).toBe(text);
  });
});

describe("cultureLine", () => {
  it("is one rate, or their range, and says how many organisms it is about", () => {
    expect(line([0.97])).toBe("yoghurt: 97 % of the fastest, by a model");
    expect(line([0.99, 0.87, 0.9])).toBe("yoghurt: 87 to 99 % of the fastest, by a model");
    expect(line([0.984, 0.981])).toBe("yoghurt: 98 % of the fastest, by a model");
    expect(line([0.001, 0.5])).toBe("yoghurt: < 1 % to 50 % of the fastest, by a model");
    expect(line([0.5], 2)).toBe("yoghurt, 1 of 3 organisms: 50 % of the fastest, by a model");
  });

  it("is not there without figures", () => {
    expect(line([], 2)).toBeNull();
  });
});

describe("limitsText", () => {
  it("tells limits in both units, and where the work prints a range", () => {
    expect(wording.limitsText(grown({ limits: bulgaricus }), writing)).toBe(
      "grows from 22 °C (71.6 °F); best at 42.5 °C (108.5 °F), the middle of 40 to 45 °C (104 to 113 °F); up to 52 °C (125.6 °F)",
    );
    expect(wording.limitsText(grown(), plainWriting("degF"))).toBe(
      "grows from 68 °F (20 °C); best at 104 °F (40 °C); up to 122 °F (50 °C)",
    );
  });
});

describe("limitsFrom", () => {
  it("names each source once, and says of none that it is one", () => {
    expect(wording.limitsFrom(grown())).toBe(organisms.starterTable);
    const limits: GrowthLimits = {
      organism: "Constructed",
      minimum: at({ kind: "common practice" }),
      optimum: at({ kind: "from memory", work: "a handbook" }),
      maximum: at({ kind: "own" }),
    };
    expect(wording.limitsFrom(grown({ limits }))).toBe(
      "common practice, no source; from memory of a handbook; your own figures",
    );
  });
});

describe("notModelledTexts", () => {
  it("gives a sentence for each reason", () => {
    expect(
      wording.notModelledTexts([
        { organism: "A", because: "limit not known" },
        { organism: "B", because: "limits do not fit the model" },
        { organism: "C", because: "limit not known" },
      ]),
    ).toEqual([
      "Not estimated for A, C: not all of their limits were found published.",
      "Not estimated for B: the published limits do not fit the model.",
    ]);
    expect(wording.notModelledTexts([])).toEqual([]);
  });
});

it("shortens the genus only", () => {
  expect(wording.shortOrganism("Lactobacillus delbrueckii subsp. bulgaricus")).toBe(
    "L. delbrueckii subsp. bulgaricus",
  );
});

it("claims nothing about safety, near each night and in the method", () => {
  for (const text of [wording.nightCaution, wording.growthMethodText]) {
    expect(text).toMatch(/harmful germs/);
    expect(text).toMatch(/strains differ by several degrees/);
  }
});
