import { describe, expect, it } from "vitest";
import { analyseProbes } from "../src/probe-analysis.ts";
import { growthOverHold } from "../src/culture/growth-over-hold.ts";
import { reuteri, thermophilus } from "../src/culture/organisms.ts";
import { readProbes } from "../src/probe-night.ts";
import { celsiusDifference } from "../src/quantity.ts";
import { assumedThermometer } from "../src/thermometer/budget.ts";
import { assumedRequest, filesOf, type ProbePlaces } from "./probe-files.ts";

const { request, context } = assumedRequest([12, 36]);
const analysed = (together: boolean, ...files: ProbePlaces[]) =>
  analyseProbes(
    readProbes(
      { ...request, together },
      filesOf(...files),
      request.thermometer ?? assumedThermometer,
    ),
    context,
  );

/** Verdicts on a jar in one file and on a bath in another. */
const counts = (together: boolean): readonly number[] =>
  analysed(together, [["Jar", "food"]], [["Bath", "bath"]]).map(({ verdicts }) => verdicts.length);

describe("analyseProbes", () => {
  const [probe] = analysed(false, [["Jar", "food"]]);

  it("combines the components of the budget into the hold's uncertainty (JCGM 100, 5.1.2)", () => {
    const tested = probe!.uncertainty.filter(({ source }) => source !== "hours not tested");
    const squares = tested.reduce((sum, part) => sum + part.standardUncertainty ** 2, 0);
    expect(probe!.standardUncertainty).toBeCloseTo(Math.sqrt(squares), 12);
  });

  it("widens the band by 1.96 of it on either side (JCGM 100, 6.3: 95 % of a normal distribution)", () => {
    const { band } = probe!.night.hold!;
    const expanded = 1.959964 * probe!.standardUncertainty!;
    expect(probe!.guardedBand!.low).toBeCloseTo(band.low - expanded, 5);
    expect(probe!.guardedBand!.high).toBeCloseTo(band.high + expanded, 5);
  });

  it("shows the hours not tested of the longest requirement", () => {
    expect(probe!.verdicts).toHaveLength(request.requirements.length);
    expect(probe!.uncertainty).toEqual(probe!.verdicts[1]!.uncertainty);
  });

  it("decides on the bath only where its water test has no probe in the food's place", () => {
    expect(counts(false)).toEqual([2, 2]);
    expect(counts(true)).toEqual([2, 0]);
  });

  it("reckons growth on the corrected readings of judged probes, for cultures with organisms", () => {
    const [plain] = request.requirements;
    const requirements = [
      { ...plain!, culture: "yoghurt", growth: [thermophilus] },
      { ...plain!, culture: "low", growth: [reuteri] },
      plain!,
    ];
    const warmer = { ...assumedThermometer, correction: celsiusDifference(2) };
    const probes = readProbes(
      { ...request, together: true },
      filesOf([
        ["Jar", "food"],
        ["Bath", "bath"],
      ]),
      warmer,
    );
    const [jar, bath] = analyseProbes(probes, {
      ...context,
      request: { ...request, requirements },
    });
    const { minutes, celsius } = jar!.series;
    expect(celsius[300]! - filesOf([["Jar", "food"]])[0]!.readings.probes[0]!.celsius[300]!).toBe(
      2,
    );
    expect(jar!.growth!.map(({ culture, organisms }) => [culture, organisms.length])).toEqual([
      ["yoghurt", 1],
      ["low", 0],
    ]);
    expect(jar!.growth![0]!.organisms[0]).toEqual({
      ...growthOverHold({ minutes, celsius, phases: jar!.phases }, thermophilus),
      limits: thermophilus,
    });
    expect(bath!.growth).toEqual([]);
  });
});
