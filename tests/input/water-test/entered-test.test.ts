import { describe, expect, it } from "vitest";
import { enteredTest } from "../../../src/input/water-test/entered-test.ts";
import type { SaidOfTest } from "../../../src/input/water-test/entered-test.ts";
import { emptyLog } from "../../../src/readings/typed/typed-log.ts";
import { jarLog, logOf } from "../../readings/typed/typed-helpers.ts";

const said: SaidOfTest = {
  name: null,
  appliance: "step-cooker",
  setting: "38",
  container: "jars",
  fill: "2 L",
  room: null,
  notes: "window open",
  probes: [{ name: "Jar", place: "food", thermometer: "pen" }],
};

describe("enteredTest", () => {
  it("stores the CSV under the set-up's and the night's name", () => {
    const test = enteredTest(said, logOf(["22:30 38.1", "7:00 38.0"]));
    expect(test).toMatchObject({ appliance: "step-cooker", fill: "2 L", notes: "window open" });
    expect(test.files).toEqual([
      {
        name: "step-cooker-38-jars-2026-10-03-by-hand.csv",
        source: {
          text: "Time,Jar (°C)\n2026-10-03T22:30,38.1\n2026-10-04T07:00,38.0\n",
        },
        readingOptions: { roles: new Map([["Jar", "food"]]) },
        starts: null,
        probes: said.probes,
      },
    ]);
    const named = enteredTest({ ...said, name: "Söme night/../x" }, jarLog());
    expect(named.files[0]).toMatchObject({ name: "some-night-..-x-by-hand.csv" });
  });

  it("keeps comments among the notes, with their times", () => {
    const log = logOf(["22:30 38.1 # lid opened", "7:00 38.0 # off"]);
    expect(enteredTest(said, log).notes).toBe("window open; 22:30 lid opened; 07:00 off");
    expect(enteredTest({ ...said, notes: null }, log).notes).toBe("22:30 lid opened; 07:00 off");
    expect(enteredTest({ ...said, notes: null }, logOf(["22:30 38"])).notes).toBeNull();
  });

  it("leaves out a probe that was never read", () => {
    const probes = [...said.probes, { name: "Kitchen", place: "room" as const, thermometer: null }];
    const log = logOf(
      ["22:30 38.1 -", "7:00 38 -"],
      emptyLog(["Jar", "Kitchen"], "degC", null, false),
    );
    const [file] = enteredTest({ ...said, probes }, log).files;
    expect(file?.probes).toEqual(said.probes);
    expect(file?.source).toMatchObject({ text: expect.not.stringContaining("Kitchen") as string });
  });
});
