/** The shape of every option of `heating`, and every contradiction among them. */
import * as z from "zod";
import { failed } from "../problem.ts";
import type { Outcome } from "../problem.ts";
import { parseDuration, parseTemperatureDifference } from "../quantity-text.ts";
import { fileShapes } from "../input/file-option-shapes.ts";
import { flagName } from "../input/flag-name.ts";
import { kitchenShapes } from "../input/kitchen-shapes.ts";
import { flag, once, read, room, temperature, within, words } from "../input/option-readers.ts";
import { checkShape } from "../input/option-shapes.ts";

const { thermometerAccuracy, correction, correctionUncertainty } = checkShape.shape;
const { column, unit, dateOrder, decimal, interval } = fileShapes;

export const heatingShape = z.object({
  ...kitchenShapes,
  column,
  unit,
  dateOrder,
  decimal,
  interval,
  target: temperature,
  minutes: once(
    read("a time from 1 s to 24 h, such as 10, 10min or 15s", (text) => {
      const seconds = within(1, 86_400)(parseDuration(text, "min"));
      return seconds === null ? null : seconds / 60;
    }),
  ),
  step: words("a heating step's name, such as milk-90"),
  z: once(
    read("a difference of 1 to 60 degC, such as 10 or 18F", (text) =>
      within(1, 60)(parseTemperatureDifference(text)),
    ),
  ),
  culture: words("a culture's name, such as yoghurt"),
  until: temperature,
  probe: words("a column's name, such as Pot"),
  thermometer: words("a thermometer's name, such as pen"),
  thermometerAccuracy,
  correction,
  correctionUncertainty,
  room,
  strict: flag,
});

export type HeatingOptions = z.infer<typeof heatingShape>;
type Key = keyof HeatingOptions;

const stepWhy = "a step's name brings its temperature and its time";
const untilWhy = "a culture brings its own temperatures to cool below";
const thermometerWhy = "a kitchen's thermometer brings its own correction";
const accuracyWhy = "your own check of the thermometer replaces its maker's accuracy";

const exclusive: readonly (readonly [first: Key, second: Key, why: string])[] = [
  ["step", "target", stepWhy],
  ["step", "minutes", stepWhy],
  ["culture", "until", untilWhy],
  ["thermometer", "thermometerAccuracy", thermometerWhy],
  ["thermometer", "correction", thermometerWhy],
  ["thermometer", "correctionUncertainty", thermometerWhy],
  ["correction", "thermometerAccuracy", accuracyWhy],
  ["correctionUncertainty", "thermometerAccuracy", accuracyWhy],
];

const targetWhy = "a heating step is a temperature and a time";
const correctionWhy = "a correction and its standard uncertainty belong together";

const companions: readonly (readonly [given: Key, needed: Key, why: string])[] = [
  ["target", "minutes", targetWhy],
  ["minutes", "target", targetWhy],
  ["correction", "correctionUncertainty", correctionWhy],
  ["correctionUncertainty", "correction", correctionWhy],
];

/** Fails at the first two options that cannot stand together, or the first that lacks its companion. */
export const heatingContradiction = (options: HeatingOptions): Outcome<never> | null => {
  for (const [first, second, why] of exclusive) {
    if (options[first] === undefined || options[second] === undefined) continue;
    return failed("options-contradict", { first: flagName(first), second: flagName(second), why });
  }
  for (const [given, needed, why] of companions) {
    if (options[given] === undefined || options[needed] !== undefined) continue;
    return failed("option-missing", { option: flagName(needed), why });
  }
  return null;
};
