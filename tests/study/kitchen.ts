/** A kitchen with one set-up, tested on the nights of a case. */
import type { Culture, CultureSources } from "../../src/culture/culture.ts";
import type { Kitchen, TemperatureRange, TestFile, WaterTest } from "../../src/kitchen/kitchen.ts";
import { celsius, hours } from "../../src/quantity.ts";
import type { StudyNights } from "./nights.ts";
import { kitchenThermometer } from "./thermometer.ts";

const setUp = { appliance: "appliance", setting: { kind: "fixed" }, container: "jar" } as const;

/** Cultures of a kitchen have a ceiling; where a case has none, one that nothing here comes near. */
const noCeiling = 90;

export function studyKitchen(
  study: StudyNights,
  room: TemperatureRange | null,
  thermostat: boolean | null,
): Kitchen {
  const { thermometer, logger, nights, worlds } = study;
  return {
    shownUnit: "degC",
    altitude: null,
    room,
    thermometers: [kitchenThermometer(thermometer, logger.resolution)],
    appliances: [
      {
        id: setUp.appliance,
        name: "Appliance",
        kind: "other",
        control: { kind: "fixed" },
        thermostat,
        movedOn: null,
      },
    ],
    containers: [
      {
        id: setUp.container,
        name: "Jar",
        stands: standsOf(worlds[0]!.sampled),
        volume: null,
        count: null,
        changedOn: null,
      },
    ],
    cultures: [cultureOf(study.requirement)],
    tests: nights.map((_, at) => testOf(study, at)),
    batches: [],
  };
}

const standsOf = ({ kind, container }: { kind: string; container: "basin" | "jar" }) => {
  if (container === "basin") return "basin";
  return kind === "warming box" ? "jars in air" : "jars in water";
};

const testOf = (study: StudyNights, night: number): WaterTest => ({
  ...setUp,
  id: String(night),
  fill: null,
  room: null,
  notes: null,
  files: [fileOf(study, night)],
});

const fileOf = ({ plan }: StudyNights, night: number): TestFile => ({
  path: String(night),
  sha256: "0".repeat(64),
  startsAt: null,
  unit: null,
  dateOrder: null,
  decimal: null,
  intervalSeconds: null,
  columns: [],
  probes: [
    { name: "Jar", place: "food", thermometer: "probe" },
    ...(plan.room === "recorded"
      ? [{ name: "Air", place: "room", thermometer: null } as const]
      : []),
  ],
});

const own = { kind: "own" } as const;
const sources: CultureSources = { window: own, target: own, ceiling: own, hours: own };

const cultureOf = (asked: StudyNights["requirement"]): Culture => ({
  id: "window",
  name: "",
  low: celsius(asked.low),
  high: celsius(asked.high),
  target: celsius((asked.low + asked.high) / 2),
  ceiling: celsius(asked.ceiling ?? noCeiling),
  hours: hours(asked.hours),
  sources,
  growth: [],
});
