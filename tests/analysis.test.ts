import { describe, expect, it } from "vitest";
import { analyse, type AnalysisRequest, type HashedSource } from "../src/analysis.ts";
import { celsiusDifference } from "../src/quantity.ts";
import { correctedThermometer } from "../src/thermometer/budget.ts";
import { asked, nightSeries, swinging } from "./culture/nights.ts";

const encoder = new TextEncoder();
const source = (text: string, name = "night.csv"): HashedSource => ({
  name,
  chunks: (async function* chunks() {
    yield encoder.encode(text);
  })(),
  sha256: () => "0".repeat(64),
});
const request = (more: Partial<AnalysisRequest> = {}): AnalysisRequest => ({
  version: "0.0.0",
  requirements: [asked(38, 42, 10)],
  thermometer: null,
  room: null,
  runToRun: null,
  share: 0.95,
  confidence: 0.95,
  shownUnit: "degC",
  reading: {},
  ...more,
});
const clock = (minute: number): string =>
  new Date(Date.UTC(2026, 0, 5, 20, minute)).toISOString().slice(0, 19);

/** A constructed night of 12 h at 40 degC as CSV, with one column per heading. */
const nightText = (headings: readonly string[]): string => {
  const { minutes, celsius } = nightSeries({ hoursHeld: 12, hold: swinging(40, 0.3, 25) });
  const rows = Array.from(minutes, (minute, i) =>
    [clock(minute), ...headings.map(() => celsius[i]!.toFixed(2))].join(","),
  );
  return [["Time", ...headings].join(","), ...rows].join("\n");
};
const analysed = async (text: string, more: Partial<AnalysisRequest> = {}) => {
  const outcome = await analyse(request(more), [source(text)]);
  if (!outcome.ok) throw new Error(outcome.problem.code);
  return outcome.value;
};

const counts = async (headings: readonly string[], roles: [string, "food" | "bath" | "room"][]) => {
  const { probes } = await analysed(nightText(headings), {
    reading: { roles: new Map(roles) },
  });
  return probes.map(({ series, verdicts }) => [series.role, verdicts.length]);
};

describe("analyse", () => {
  it("takes a file to a verdict and keeps where everything came from", async () => {
    const found = await analysed(nightText(["Jar (degC)"]));
    expect(found.files[0]).toMatchObject({ sha256: "0".repeat(64), readings: { rowsUsed: 781 } });
    expect(found.probes).toHaveLength(1);
    expect(found.probes[0]!.verdicts[0]).toMatchObject({ requirement: { low: 38, high: 42 } });
  });

  it("assumes +-1 degC and 0.3 degC from run to run where nothing was said, and says so", async () => {
    const found = await analysed(nightText(["Jar (degC)"]));
    expect(found.thermometer).toMatchObject({ accuracy: 1, from: "assumed" });
    expect(found.runToRun).toEqual({ value: 0.3, from: "assumed" });
    expect(found.notices.map(({ code }) => code)).toEqual(["assumed-thermometer"]);
  });

  it("applies the correction to the readings before anything else", async () => {
    const thermometer = correctedThermometer(celsiusDifference(-1.5), celsiusDifference(0.1));
    const plain = await analysed(nightText(["Jar (degC)"]));
    const found = await analysed(nightText(["Jar (degC)"]), { thermometer });
    const mean = (one: typeof found) => one.probes[0]!.night.hold!.mean;
    expect(mean(found) - mean(plain)).toBeCloseTo(-1.5, 6);
    expect(found.notices).toEqual([]);
  });

  it("decides on the food, on the bath only where no food was probed, on the room never", async () => {
    expect(
      await counts(
        ["A (degC)", "B (degC)"],
        [
          ["A (degC)", "food"],
          ["B (degC)", "bath"],
        ],
      ),
    ).toEqual([
      ["food", 1],
      ["bath", 0],
    ]);
    expect(
      await counts(
        ["A (degC)", "B (degC)"],
        [
          ["A (degC)", "room"],
          ["B (degC)", "bath"],
        ],
      ),
    ).toEqual([
      ["room", 0],
      ["bath", 1],
    ]);
  });

  it("says that a window was typed in the other unit instead of calling it missed", async () => {
    const outcome = await analyse(request({ requirements: [asked(98, 102, 10)] }), [
      source(nightText(["Jar (degC)"])),
    ]);
    expect(outcome).toMatchObject({ ok: false, problem: { code: "window-wrong-unit" } });
  });

  it("refuses a role for a probe that is not there", async () => {
    const roles = new Map([["Jra", "food"]] as const);
    const outcome = await analyse(request({ reading: { roles } }), [
      source(nightText(["Jar (degC)"])),
    ]);
    expect(outcome).toMatchObject({
      ok: false,
      problem: { code: "probe-unknown", facts: { probe: "Jra", probes: '"Jar"' } },
    });
  });

  it("passes a file's problem on", async () => {
    const outcome = await analyse(request(), [source("")]);
    expect(outcome).toMatchObject({ ok: false, problem: { code: "file-empty" } });
  });
});
