import { describe, expect, it } from "vitest";
import { decideNights, readNights } from "../../src/analysis.ts";
import { decideTogether } from "../../src/culture/decide-together.ts";
import { futureRun, runScatter } from "../../src/culture/run-to-run.ts";
import { analyseSetUp, type DecidedTest } from "../../src/kitchen-analysis/set-up-analysis.ts";
import { evidenceOf } from "../../src/probe-analysis.ts";
import type { ProbeRole } from "../../src/readings/series.ts";
import { asked } from "../culture/nights.ts";
import { assumedRequest } from "../probe-files.ts";
import { nightText, sourceOf, waterTest } from "./small-kitchen.ts";

const startsAt = Date.UTC(2026, 2, 14, 20);
/** The first asks for warmth, the second for coolness. */
const requirements = [asked(38.5, 44, 10), asked(33, 40.5, 10)];
const scatter = runScatter([[38, 38.4]]);

/** A test of probes at known levels, decided by itself. */
const decided = async (
  id: string,
  ...probes: readonly (readonly [name: string, role: ProbeRole, level: number])[]
): Promise<DecidedTest> => {
  const request = {
    ...assumedRequest([]).request,
    requirements,
    together: true,
    files: probes.map(([name, role]) => ({
      reading: { roles: new Map([[name, role]]) },
      thermometers: new Map(),
      startsAt: null,
    })),
  };
  const sources = probes.map(([column, , level]) =>
    sourceOf(`${column}.csv`, nightText({ level, startsAt, column })),
  );
  const nights = await readNights(request, sources);
  if (!nights.ok) throw new Error(nights.problem.code);
  const analysis = decideNights(request, nights.value, futureRun(scatter, 1));
  return { test: waterTest(id, []), analysis, probes: analysis.probes };
};

/** Constructed nights. */
describe("analyseSetUp", () => {
  it("gives one test's own verdicts, each of the probe least likely to serve the culture", async () => {
    const one = await decided(
      "one",
      ["Back", "food", 39],
      ["Front", "food", 40],
      ["Bath", "bath", 41],
    );
    const [low, high] = one.probes;
    const found = analyseSetUp([one], scatter);
    expect(found.verdicts).toEqual([low!.verdicts[0], high!.verdicts[1]]);
    expect(found.verdicts[0]!.probability).toBeLessThan(high!.verdicts[0]!.probability);
    expect(found).toMatchObject({ testIds: ["one"], mean: expect.closeTo(39.5, 1) });
    expect(found.runToRun).toEqual(one.analysis.runToRun);
    expect(found.setUp).toEqual({
      appliance: "cooker",
      setting: { kind: "step", celsius: 38 },
      container: "jars",
    });
  });

  it("takes several tests together, each with its least likely probe", async () => {
    const first = await decided("first", ["Back", "food", 39], ["Front", "food", 40]);
    const second = await decided("second", ["Jar", "food", 39.2]);
    const found = analyseSetUp([first, second], scatter);
    const runToRun = futureRun(scatter, 2);
    const evidence = [first.probes[0]!, second.probes[0]!].map((probe) =>
      Object.assign(evidenceOf(probe, { request: first.analysis, runToRun }), {
        thermometerId: null,
      }),
    );
    expect(found.verdicts[0]).toEqual(decideTogether(requirements[0]!, evidence));
    expect(found).toMatchObject({ testIds: ["first", "second"], runToRun });
    expect(found.probe).toBe(second.probes[0]);
    // Means of the tests: 39.5 and 39.2.
    expect(found.mean).toBeCloseTo(39.35, 1);
  });

  it("shows the least likely probe of its newest test", async () => {
    const newest = await decided("newest", ["Back", "food", 38.4], ["Middle", "food", 39.5]);
    expect(analyseSetUp([newest], scatter).probe?.series.name).toBe("Back");
  });

  it("has no verdict, and no mean, where only the room was read", async () => {
    const room = await decided("room", ["Kitchen", "room", 21]);
    expect(analyseSetUp([room], scatter)).toMatchObject({
      verdicts: [],
      mean: null,
      probe: null,
      testIds: ["room"],
    });
  });
});
