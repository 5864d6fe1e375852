/** A constructed heating analysis: what the renderings are tried on. */
import { heatingTargets } from "../../src/culture/heating-targets.ts";
import type { HeatingCoolDown, HeatingStep } from "../../src/culture/heating-types.ts";
import type { HeatingAnalysis } from "../../src/heating-analysis.ts";
import { celsiusDifference } from "../../src/quantity.ts";
import { specifiedThermometer } from "../../src/thermometer/budget.ts";
import { fileOf } from "../probe-files.ts";

export const sampleStep: HeatingStep = {
  target: heatingTargets[0]!,
  longest: { fromMinute: 30, toMinute: 45.4, minutes: 15.4 },
  guarded: { fromMinute: 31, toMinute: 45, minutes: 14 },
  peak: 92.3,
  heldAt: 91.2,
  expandedUncertainty: 0.48,
  surelyAtReading: 90.48,
  equivalentMinutes: { value: 28.66, standardUncertainty: 1.91 },
  verdict: "holds",
  probability: 0.998,
  reasons: [],
  uncertainty: [
    { source: "specification", standardUncertainty: 0.29, from: "stated" },
    { source: "steps of the display", standardUncertainty: 0.03, from: "measured" },
  ],
};

export const openStep: HeatingStep = {
  ...sampleStep,
  longest: { fromMinute: 30, toMinute: 38.5, minutes: 8.5 },
  guarded: null,
  heldAt: 89.8,
  verdict: "unproven",
  probability: 0.21,
  reasons: [
    { code: "too-short", missingMinutes: 1.5 },
    { code: "near-target", margin: -0.2, expanded: 0.48 },
    { code: "coarse", intervalMinutes: 3 },
  ],
};

const cool = { fromMinute: 45.4, safeAtMinute: null, predicted: null, unknown: null } as const;

export const coolDowns: readonly HeatingCoolDown[] = [
  { ...cool, to: 48, of: "ceiling", safeAtMinute: 120 },
  {
    ...cool,
    to: 45,
    of: "window",
    predicted: {
      minute: 129,
      low: 126,
      high: 133,
      timeConstantMinutes: 79,
      surroundings: 19.2,
    },
  },
];

export const sampleHeating = (more: Partial<HeatingAnalysis> = {}): HeatingAnalysis => ({
  version: "0.0.0",
  culture: { id: "yoghurt", name: "Yoghurt" },
  notices: [],
  surroundings: null,
  confidence: 0.95,
  shownUnit: "degC",
  file: {
    readings: { ...fileOf(), name: "pot.csv", startWallClock: Date.UTC(2026, 2, 7, 18, 40) },
    sha256: "0".repeat(64),
  },
  probe: "Milk",
  step: sampleStep,
  coolDowns,
  thermometer: specifiedThermometer(celsiusDifference(0.5), "stated"),
  thermometerId: null,
  ...more,
});
