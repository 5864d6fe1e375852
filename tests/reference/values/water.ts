import { celsiusToFahrenheit, fahrenheitToCelsius } from "../../../src/quantity.ts";
import { boilingPoint } from "../../../src/thermometer/boiling-point.ts";
import { saturationPressure, saturationTemperature } from "../../../src/thermometer/saturation.ts";
import { pressureAtAltitude } from "../../../src/thermometer/standard-atmosphere.ts";
import { value } from "../reference-values.ts";
import type { ReferenceGroup } from "../reference-values.ts";

// prettier-ignore
const boilingUnder: readonly (readonly [number, string])[] = [
  [850, "95.1253"], [900, "96.6870"], [950, "98.1783"], [980, "99.0421"], [990, "99.3252"],
  [1000, "99.6059"], [1013.25, "99.9743"], [1020, "100.1604"], [1030, "100.4343"], [1040, "100.7060"],
];
/** Altitude in metres; Pa as tables print it and by the formula; boiling point, degC. */
// prettier-ignore
const altitudes: readonly (readonly [number, string | null, string, string])[] = [
  [0, "101325", "101325.00", "99.9743"], [250, "98357.6", "98357.65", "99.1437"],
  [500, "95461.3", "95461.29", "98.3126"], [750, "92634.6", "92634.60", "97.4812"],
  [1000, "89876.3", "89876.29", "96.6493"], [1500, "84559.7", "84559.68", "94.9842"],
  [2000, "79501.4", "79501.42", "93.3172"], [2500, null, "74691.76", "91.6482"],
  [3000, "70121.2", "70121.16", "89.9770"], [3500, "65780.4", "65780.39", "88.3036"],
  [4000, "61660.4", "61660.44", "86.6277"],
];
// prettier-ignore
const feet: readonly (readonly [number, string])[] = [
  [0, "212"], [500, "211.1"], [1000, "210.2"], [2000, "208.4"], [5000, "203"], [6000, "201.1"],
  [8000, "197.4"], [10000, "193.6"],
];

const boilingAt = (altitude: number): number => boilingPoint({ altitude, pressure: null })!.celsius;
const pascalAt = (altitude: number): number => pressureAtAltitude(altitude)! * 100;

/** Saturation line of water. */
export const saturation: ReferenceGroup = {
  title: "Saturation line of water",
  about: ["thermometer/saturation"],
  blocks: [
    {
      source: "IAPWS R7-97(2012), IF97, tables 35 and 36 for program verification",
      asked: "as printed",
      because: "all nine printed digits",
      values: [
        ...(
          [
            [300, "0.353658941E-2"],
            [500, "0.263889776E1"],
            [600, "0.123443146E2"],
          ] as const
        ).map(([kelvin, megapascal]) =>
          value(
            `pressure at ${kelvin} K, MPa`,
            megapascal,
            saturationPressure(kelvin - 273.15)! / 1e4,
          ),
        ),
        ...(
          [
            [0.1, "0.372755919E3"],
            [1, "0.453035632E3"],
            [10, "0.584149488E3"],
          ] as const
        ).map(([megapascal, kelvin]) =>
          value(
            `temperature at ${megapascal} MPa, K`,
            kelvin,
            saturationTemperature(megapascal * 1e4)! + 273.15,
          ),
        ),
      ],
    },
    {
      source: "IAPWS-IF97 by the Python library iapws 1.5.2",
      asked: { absolute: 1e-4 },
      because: "one unit of the last decimal",
      values: boilingUnder.map(([hectopascal, celsius]) =>
        value(`degC under ${hectopascal} hPa`, celsius, saturationTemperature(hectopascal)!),
      ),
    },
  ],
};

/** Air pressure over altitude. */
export const atmosphere: ReferenceGroup = {
  title: "Standard atmosphere",
  about: ["thermometer/standard-atmosphere"],
  blocks: [
    {
      source: "US Standard Atmosphere 1976 over geometric altitude, as tables print it",
      asked: { absolute: 0.1 },
      because:
        "one printed decimal, at 250 m cut off rather than rounded; at 2500 m public tables print 74692.7, which the formula does not support, so that it is left out",
      values: altitudes.flatMap(([altitude, printed]) =>
        printed === null ? [] : [value(`Pa at ${altitude} m`, printed, pascalAt(altitude))],
      ),
    },
    {
      source: "the same, the formula by NumPy 2.4.6",
      asked: { absolute: 0.006 },
      because: "half of the second decimal",
      values: altitudes.map(([altitude, , recomputed]) =>
        value(`Pa at ${altitude} m`, recomputed, pascalAt(altitude)),
      ),
    },
  ],
};

/** Where water boils. */
export const boiling: ReferenceGroup = {
  title: "Boiling point over altitude",
  about: ["thermometer/boiling-point"],
  blocks: [
    {
      source: "table over altitude in feet, degF, credited to NASA and NOAA",
      asked: { absolute: 0.25 },
      because: "rounded there, and from an older temperature scale",
      values: feet.map(([altitude, fahrenheit]) =>
        value(
          `degF at ${altitude} ft`,
          fahrenheit,
          celsiusToFahrenheit(boilingAt(altitude * 0.3048)),
        ),
      ),
    },
    {
      source: "US Standard Atmosphere 1976, then IAPWS-IF97 by the Python library iapws 1.5.2",
      asked: { absolute: 5e-4 },
      because: "0.05 Pa of rounding in the tables moves the fourth decimal",
      values: altitudes.map(([altitude, , , celsius]) =>
        value(`degC at ${altitude} m`, celsius, boilingAt(altitude)),
      ),
    },
    {
      source: "slope of the saturation line near 1013.25 hPa, iapws 1.5.2",
      asked: { absolute: 1e-5 },
      because: "one unit of the last decimal",
      values: [
        value(
          "K per hPa",
          "0.02765",
          (saturationTemperature(1014.25)! - saturationTemperature(1012.25)!) / 2,
        ),
      ],
    },
  ],
};

/** Degrees Fahrenheit. */
export const conversions: ReferenceGroup = {
  title: "Degrees Fahrenheit",
  about: ["quantity"],
  blocks: [
    {
      source:
        "pairs printed by the FDA Food Code's state adoptions and the Grade A milk definition (25 TAC 217.1)",
      asked: { absolute: 0.5 },
      because:
        "printed in whole degrees, milk's rounded up rather than to the nearest; so half a degree and less",
      values: (
        [
          [41, "5"],
          [70, "21"],
          [135, "57"],
          [145, "63"],
          [161, "72"],
          [194, "90"],
          [212, "100"],
        ] as const
      ).map(([fahrenheit, celsius]) =>
        value(`${fahrenheit} degF in degC`, celsius, fahrenheitToCelsius(fahrenheit)),
      ),
    },
    {
      source: "degF = 1.8 degC + 32, exact by definition (NIST SP 811, B.8)",
      asked: { absolute: 5e-14 },
      because: "rounding of numbers up to 100",
      values: (
        [
          [32, "0"],
          [41, "5"],
          [194, "90"],
          [212, "100"],
          [-40, "-40"],
        ] as const
      ).map(([fahrenheit, celsius]) =>
        value(`${fahrenheit} degF in degC`, celsius, fahrenheitToCelsius(fahrenheit)),
      ),
    },
  ],
};
