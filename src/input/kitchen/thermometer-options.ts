/** Options of `thermometer`, and every contradiction among them. */
import * as z from "zod";
import {
  readAltitude,
  readDate,
  readPressure,
  readReading,
} from "../../kitchen/schema/written-values.ts";
import { parseRange, parseTemperature, parseTemperatureDifference } from "../../quantity-text.ts";
import { failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import { flag, once, oneOf, read, several, temperature, words } from "../option-readers.ts";
import { kitchenShapes } from "../kitchen-shapes.ts";

/** Metres, with the words: without a unit 1450 could be feet. */
const altitude = once(
  read("a height above sea level with its unit, such as 1450m or 4760ft", (text) => {
    const metres = /[a-z]\s*$/i.test(text) ? readAltitude(text) : null;
    return metres === null ? null : { metres, written: text.trim() };
  }),
);

/** hPa, with the words; how it was reduced is another option's word. */
const pressure = once(
  read(
    'the air\'s pressure with its unit, such as "851 hPa", "25.1 inHg" or "638 mmHg"',
    (text) => {
      const found = /[a-z]\s*$/i.test(text) ? readPressure(`${text} station`) : null;
      return found === null ? null : { hectopascal: found.hectopascal, written: text.trim() };
    },
  ),
);

/** However wrong: 212 without its letter is asked about, not refused. */
const reading = read("what the thermometer showed, such as 0.3, 95.2 or 203.5F", (text) => {
  const found = parseTemperature(text);
  return found !== null && readReading(text) !== null ? { ...found, written: text.trim() } : null;
});

const aboveNothing = (expected: string) =>
  once(
    read(expected, (text) => {
      const found = parseTemperatureDifference(text);
      return found !== null && found > 0 && found <= 10
        ? { celsius: found, written: text.trim() }
        : null;
    }),
  );

export const thermometerShape = z.object({
  ...kitchenShapes,
  ice: several(reading),
  boiling: several(reading),
  altitude,
  pressure,
  pressureAt: oneOf("station or sea-level", { station: "station", "sea-level": "sea-level" }),
  reference: temperature,
  reads: several(reading),
  referenceUncertainty: once(
    read("a standard uncertainty of 0 to 20 degC, such as 0.05 or 0.1F", (text) => {
      const found = parseTemperatureDifference(text);
      return found !== null && found >= 0 && found <= 20
        ? { celsius: found, written: text.trim() }
        : null;
    }),
  ),
  accuracy: aboveNothing("a half-width above 0, such as 0.5 or 0.9F"),
  resolution: aboveNothing("a step of temperature above 0, such as 0.1 or 0.2F"),
  name: words("a name, such as Pen thermometer"),
  date: once(read("a day as year-month-day, such as 2026-02-14", readDate)),
  confirm: flag,
  window: once(
    read("two temperatures, the lower first, such as 36.5..39.5 or 97.7F..103.1F", (text) => {
      const found = parseRange(text);
      return found !== null && found.low.celsius < found.high.celsius ? found : null;
    }),
  ),
  culture: z.array(z.string()).default([]),
});

export type ThermometerOptions = z.infer<typeof thermometerShape>;

/** Options that may be given again. */
export const thermometerRepeatable = ["ice", "boiling", "reads", "culture"] as const;

const missing = (option: string, why: string): Outcome<never> =>
  failed("option-missing", { option, why });

/** What belongs together and was not said together; null where all is well. */
export const incomplete = (options: ThermometerOptions): Outcome<never> | null => {
  const { boiling, altitude: height, pressure: air, pressureAt, reference, reads } = options;
  if (air !== undefined && pressureAt === undefined) {
    return missing(
      "--pressure-at",
      "a barometer on the spot (station) and a forecast (sea-level) give different figures for the same air",
    );
  }
  if (air === undefined && pressureAt !== undefined) {
    return missing("--pressure", "--pressure-at says where a pressure was read");
  }
  if (boiling.length === 0 && (height !== undefined || air !== undefined)) {
    return missing("--boiling", "height and pressure say at what temperature water boils");
  }
  if (reference === undefined && reads.length > 0) {
    return missing("--reference", "--reads is what yours showed beside a reference thermometer");
  }
  if (reference !== undefined && reads.length === 0) {
    return missing("--reads", "--reference is what another thermometer showed beside yours");
  }
  if (reference === undefined && options.referenceUncertainty !== undefined) {
    return missing("--reference", "an uncertainty is of something");
  }
  return null;
};
