import { fahrenheitToCelsius } from "../../quantity.ts";
import type { SetAsideReason } from "../readings-file.ts";

/**
 * Values by which common digital sensors, and the programs that read them, say
 * that there is no reading:
 * - -127 (-196.6 degF): sensor gone; a convention of the common driver library
 *   for one-wire sensors, read in its header, not in the sensor's data sheet;
 * - 127.9375, register 0x07FF: failed conversion; checked for in the Linux
 *   kernel's drivers/w1/slaves/w1_therm.c; printed with one to four decimals;
 * - 2047.9375 and 4095.9375, all bits of a register set; 32767 and 65535 and
 *   their tenths and hundredths; runs of nines: fillers, from memory.
 */
const codes = [
  -127, -196.6, 127.94, 127.9375, 127.938, 127.9, 2047.9375, 2047.94, 2047, 2048, 4095, 4095.9375,
  4095.94, 999, 999.9, 9999, 9999.9, 99999, 3276.7, 327.67, 32767, -32768, -3276.8, -327.68, 6553.5,
  655.35, 65535,
];
const nines = [-99.9, -999, -999.9, -9999, -9999.9];

/** One ten-thousandth of a degree: codes are printed, so they match but for conversion. */
const key = (celsius: number): number => Math.round(celsius * 1e4);

// A filler written by a program that shows degF has been converted on the way here.
const images = [...codes, ...nines].flatMap((code) => [key(code), key(fahrenheitToCelsius(code))]);
// The image in degC of a few codes would be a temperature that water has.
const faultKeys = new Set(images.filter((code) => code > key(125) || code < key(-55)));

/** What no test with water, ice or the air around them shows, degC. */
const lowest = -60;
const highest = 160;

/**
 * Whether one temperature, degC, is a sensor's code for a fault
 * (`sensor-fault`) or beyond -60..160 degC (`out-of-range`); null: usable.
 * Looks at the value alone; 85.0 needs its neighbours, see `powerOnFaults`.
 */
export const classifyTemperature = (celsius: number): SetAsideReason | null => {
  if (celsius > -55 && celsius < 125) return null;
  if (faultKeys.has(key(celsius))) return "sensor-fault";
  return celsius >= lowest && celsius <= highest ? null : "out-of-range";
};

/**
 * The temperature register of a DS18B20 after power-on, degC (0x0550): data
 * sheet, note to the table of temperatures and codes.
 */
const powerOn = 85;
const isPowerOn = (value: number): boolean => Math.abs(value - powerOn) < 1e-6;

/** Least leap to and from 85.0, degC, and how many times the step beside it. */
const leastLeap = 5;
const timesStep = 4;

/** Index of the next finite value from `from` in direction `by`, or -1. */
const nextFinite = (celsius: Float64Array, from: number, by: 1 | -1): number => {
  let index = from;
  while (index >= 0 && index < celsius.length) {
    if (Number.isFinite(celsius[index])) return index;
    index += by;
  }
  return -1;
};

/** True where the readings from `edge` on (direction `by`) do not lead up to 85.0; null: none. */
const leaps = (celsius: Float64Array, edge: number, by: 1 | -1): boolean | null => {
  const near = nextFinite(celsius, edge, by);
  if (near < 0) return null;
  const leap = Math.abs(celsius[near]! - powerOn);
  const further = nextFinite(celsius, near + by, by);
  const beside =
    further < 0 || isPowerOn(celsius[further]!) ? 0 : Math.abs(celsius[further]! - celsius[near]!);
  return leap >= leastLeap && leap >= timesStep * beside;
};

/**
 * Marks (1) readings of exactly 85.0 degC that stand alone: a digital sensor's
 * power-on value. A run of them counts when the readings leap to it and away
 * from it (at the file's ends: on the one side there is), by at least 5 degC
 * and four times the step beside the leap; so heating that passes through, or
 * stays at, 85.0 is not a fault. The bounds are common sense, no source.
 * NaN is passed over. Linear time.
 */
export const powerOnFaults = (celsius: Float64Array): Uint8Array => {
  const marks = new Uint8Array(celsius.length);
  for (let start = 0; start < celsius.length; start++) {
    if (!isPowerOn(celsius[start]!)) continue;
    let end = start;
    while (end < celsius.length && !(Math.abs(celsius[end]! - powerOn) >= 1e-6)) end++;
    const before = leaps(celsius, start - 1, -1);
    const after = leaps(celsius, end, 1);
    const alone = before !== false && after !== false && !(before === null && after === null);
    if (alone)
      for (let index = start; index < end; index++)
        if (isPowerOn(celsius[index]!)) marks[index] = 1;
    start = end;
  }
  return marks;
};
