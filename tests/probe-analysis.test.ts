import { describe, expect, it } from "vitest";
import { assumedRequest, fileOf } from "./probe-files.ts";
import { analyseFile } from "../src/probe-analysis.ts";

describe("analyseFile", () => {
  const { request, context } = assumedRequest([12, 36]);
  const [probe] = analyseFile(fileOf(), 0, context);

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
});
