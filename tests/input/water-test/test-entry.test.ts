import { describe, expect, it } from "vitest";
import { clockText, testEntry } from "../../../src/input/water-test/test-entry.ts";
import type { WaterTest } from "../../../src/kitchen/kitchen.ts";

const test: WaterTest = {
  id: "night",
  appliance: "pot",
  setting: { kind: "step", celsius: 38 },
  container: "jars",
  fill: "2 L",
  room: { low: 17, high: (75.2 - 32) / 1.8 },
  notes: null,
  files: [
    {
      path: "readings/night.csv",
      sha256: "ab".repeat(32),
      startsAt: Date.UTC(2026, 9, 3, 22, 10),
      unit: "degF",
      dateOrder: "day-first",
      decimal: ",",
      intervalSeconds: 30,
      columns: ["Jar"],
      probes: [
        { name: "Jar", place: "food", thermometer: "pen" },
        { name: "Room: 1", place: "room", thermometer: null },
      ],
    },
  ],
};
const said = { ...test, name: null, setting: "100.4F", files: [] };

describe("testEntry", () => {
  it("says all that was said, in the words of the file", () => {
    expect(testEntry(said, test, ["readings/night-2.csv"])).toEqual({
      appliance: "pot",
      setting: "100.4F",
      container: "jars",
      fill: "2 L",
      room: "17..24",
      files: [
        {
          file: "readings/night-2.csv",
          sha256: "ab".repeat(32),
          starts: "2026-10-03 22:10",
          unit: "F",
          "date-order": "day-first",
          decimal: "comma",
          interval: "30s",
          columns: ["Jar"],
          probes: { Jar: { place: "food", thermometer: "pen" }, "Room: 1": { place: "room" } },
        },
      ],
    });
  });

  it("leaves the setting out where nothing can be set", () => {
    const fixed = { ...test, setting: { kind: "fixed" } as const };
    expect(testEntry({ ...said, setting: "fixed" }, fixed, [])).not.toHaveProperty("setting");
  });

  it("keeps the seconds of a clock only where there are some", () => {
    expect(clockText(Date.UTC(2026, 0, 2, 3, 4, 5))).toBe("2026-01-02 03:04:05");
  });
});
