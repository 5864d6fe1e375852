import { describe, expect, it } from "vitest";
import { readNights, decideNights } from "../../src/analysis.ts";
import type { ProbeAnalysis } from "../../src/analysis-types.ts";
import { probeResponses } from "../../src/kitchen-analysis/probe-responses.ts";
import type { ProbeRole } from "../../src/readings/series.ts";
import { assumedRequest } from "../probe-files.ts";
import { nightText, sourceOf } from "./small-kitchen.ts";

const startsAt = Date.UTC(2026, 2, 14, 20);
const pen = (id: string) => ({
  id,
  model: {
    centre: 38,
    correction: 0,
    slope: 0,
    components: [
      {
        source: "statement",
        shape: "line",
        atCentre: 0.2,
        perDegree: 0,
        correlation: 0,
        degreesOfFreedom: Infinity,
        from: "stated",
      },
    ],
    from: "stated",
    accuracy: null,
  } as const,
});

/** Probes that ran together, each with its place, level and thermometer. */
const probesOf = async (
  ...probes: readonly (readonly [column: string, ProbeRole, level: number, pen: string])[]
): Promise<readonly ProbeAnalysis[]> => {
  const request = {
    ...assumedRequest([10]).request,
    together: true,
    files: probes.map(([column, role, , id]) => ({
      reading: { roles: new Map([[column, role]]) },
      thermometers: new Map([[column, pen(id)]]),
      startsAt: null,
    })),
  };
  const sources = probes.map(([column, , level]) =>
    sourceOf(`${column}.csv`, nightText({ level, startsAt, column })),
  );
  const nights = await readNights(request, sources);
  if (!nights.ok) throw new Error(nights.problem.code);
  return decideNights(request, nights.value).probes;
};

/** Of the offset between a jar read by thermometer "a" and a bath. */
const doubt = async (bathPen: string): Promise<number> => {
  const probes = await probesOf(["Jar", "food", 40, "a"], ["Bath", "bath", 40.6, bathPen]);
  return probeResponses(probes, null)[0]!.response.offset.standardUncertainty;
};

/** Constructed nights: the same course at different levels. */
describe("probeResponses", () => {
  it("fits every food probe to every bath probe of the test", async () => {
    const probes = await probesOf(
      ["Jar", "food", 40, "a"],
      ["Bath", "bath", 40.6, "b"],
      ["Lid", "food", 39.8, "a"],
    );
    const found = probeResponses(probes, { low: 19, high: 21 });
    expect(found.map(({ food, bath }) => [food, bath])).toEqual([
      [0, 1],
      [2, 1],
    ]);
    expect(found[0]!.response.offset.value).toBeCloseTo(0.6, 1);
    expect(found[1]!.response.offset.value).toBeCloseTo(0.8, 1);
    expect(found[0]!.response.room).toEqual({ mean: 20, from: "stated" });
  });

  it("counts two probes' doubts as independent, also where both are listed as one thermometer", async () => {
    // One thermometer cannot have been in two places at once.
    for (const bathPen of ["a", "b"]) {
      // oxlint-disable-next-line no-await-in-loop
      expect(await doubt(bathPen)).toBeCloseTo(Math.hypot(0.2, 0.2), 2);
    }
  });

  it("takes a probe in the room before a range that was stated", async () => {
    const probes = await probesOf(
      ["Jar", "food", 40, "a"],
      ["Bath", "bath", 40.6, "a"],
      ["Kitchen", "room", 22.5, "a"],
    );
    const [{ response }] = probeResponses(probes, { low: 5, high: 9 }) as [
      ReturnType<typeof probeResponses>[0],
    ];
    expect(response.room).toMatchObject({ from: "measured", mean: expect.closeTo(22.5, 1) });
  });

  it("has nothing to fit without a bath, or without a hold", async () => {
    const [jar, bath] = await probesOf(["Jar", "food", 40, "a"], ["Bath", "bath", 41, "a"]);
    expect(probeResponses([jar!], null)).toEqual([]);
    const open = { ...jar!, night: { ...jar!.night, hold: null } };
    expect(probeResponses([open, bath!], null)).toEqual([]);
  });
});
