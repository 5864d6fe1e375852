import { describe, expect, it } from "vitest";
import type { AnalysisRequest, FileRequest } from "../src/analysis-types.ts";
import { readProbes } from "../src/probe-night.ts";
import { celsiusDifference } from "../src/quantity.ts";
import { correctedThermometer } from "../src/thermometer/budget.ts";
import type { CorrectionModel } from "../src/thermometer/correction-model.ts";
import { assumedRequest, fileOf, filesOf } from "./probe-files.ts";

const common = correctedThermometer(celsiusDifference(0), celsiusDifference(0.2));
/** A line of known figures: at a reading of 40 degC -0.5, its doubt hypot(0.05, 0.01 (40 - 50)). */
const line: CorrectionModel = {
  centre: 50,
  correction: -0.8,
  slope: -0.03,
  components: [
    {
      source: "scatter of readings",
      shape: "line",
      correlation: 0,
      atCentre: 0.05,
      perDegree: 0.01,
      degreesOfFreedom: 4,
      from: "measured",
    },
  ],
  from: "measured",
  accuracy: null,
};
const request = (more: Partial<AnalysisRequest>): AnalysisRequest => ({
  ...assumedRequest([12]).request,
  ...more,
});
const withLine = (probe: string): FileRequest => ({
  reading: {},
  thermometers: new Map([[probe, { id: "pen", model: line }]]),
  startsAt: null,
});
const jarAndBath = filesOf([
  ["Jar", "food"],
  ["Bath", "bath"],
]);

describe("readProbes", () => {
  it("leaves the very same readings where nothing is to correct", () => {
    const files = filesOf([["Jar", "food"]]);
    const [jar] = readProbes(request({}), files, common);
    expect(jar!.series).toBe(files[0]!.readings.probes[0]);
    expect(jar).toMatchObject({ thermometer: common, thermometerId: null, test: 0 });
  });

  it("corrects reading by reading where the correction is a line", () => {
    const [jar] = readProbes(request({ files: [withLine("jar")] }), jarAndBath, common);
    const raw = fileOf().probes[0]!.celsius;
    const by = jar!.series.celsius.map((celsius, at) => celsius - raw[at]!);
    // By hand: -0.8 - 0.03 (20 - 50) = 0.1 at the start's 20 degC, -0.5 at 40 degC.
    expect(by[0]).toBeCloseTo(0.1, 9);
    expect(by[raw.indexOf(40)]).toBeCloseTo(-0.5, 9);
  });

  it("takes a checked thermometer for every probe that has none of its own", () => {
    const checkedThermometer = { id: "kitchen pen", model: line };
    const [jar, bath] = readProbes(
      request({ checkedThermometer, files: [withLine("jar")] }),
      jarAndBath,
      common,
    );
    expect([jar!.thermometerId, bath!.thermometerId]).toEqual(["pen", "kitchen pen"]);
    expect([...bath!.series.celsius]).toEqual([...jar!.series.celsius]);
  });

  it("states the thermometer at the hold's mean reading", () => {
    const [jar] = readProbes(request({ files: [withLine("Jar")] }), jarAndBath, common);
    // The constructed hold swings about 40 degC.
    expect(jar!.night.hold!.mean).toBeCloseTo(39.5, 2);
    expect(jar!.thermometer.correction).toBeCloseTo(-0.5, 3);
    expect(jar!.thermometer.standardUncertainty).toBeCloseTo(Math.hypot(0.05, 0.1), 3);
    expect(jar!.thermometerId).toBe("pen");
  });

  it("takes a probe that is not listed as measured by the thermometer of the whole request", () => {
    const [, bath] = readProbes(request({ files: [withLine("Jar")] }), jarAndBath, common);
    expect(bath).toMatchObject({ thermometer: common, thermometerId: null });
    expect(bath!.series.celsius).toEqual(fileOf().probes[0]!.celsius);
  });

  it("states the thermometer at the median reading where there is no hold", () => {
    const [file] = filesOf([["Jar", "food"]]);
    const short = {
      ...file!.readings.probes[0]!,
      minutes: Float64Array.of(0, 1, 2),
      celsius: Float64Array.of(20, 30, 90),
    };
    const files = [{ ...file!, readings: { ...file!.readings, probes: [short] } }];
    const [jar] = readProbes(request({ files: [withLine("Jar")] }), files, common);
    expect(jar!.night.hold).toBeNull();
    expect(jar!.thermometer.correction).toBeCloseTo(-0.2, 9);
  });

  it("counts files as water tests of their own unless they ran together", () => {
    const files = filesOf([["Jar", "food"]], [["Bath", "bath"]]);
    const tests = (together: boolean) =>
      readProbes(request({ together }), files, common).map(({ test }) => test);
    expect(tests(false)).toEqual([0, 1]);
    expect(tests(true)).toEqual([0, 0]);
  });
});
