import type { FileUnit } from "../readings-file.ts";
import { classifyTemperature, powerOnFaults } from "./faults.ts";
import { pick } from "../rows/pick.ts";
import { codeOf, good } from "../rows/tally.ts";
import { findSpikes } from "./spikes.ts";

const sensorFault = codeOf("sensor-fault");
const outOfRange = codeOf("out-of-range");
const spike = codeOf("spike");

/** Converts to degC in place. */
export const toCelsius = (values: Float64Array, unit: FileUnit): void => {
  if (unit === "degC") return;
  if (unit === "K") {
    // To a millionth, so that 295.15 K is 22 degC and not a hair more.
    for (let at = 0; at < values.length; at += 1)
      values[at] = Math.round((values[at]! - 273.15) * 1e6) / 1e6;
    return;
  }
  for (let at = 0; at < values.length; at += 1) values[at] = (values[at]! - 32) / 1.8;
};

/** Marks sensor codes and impossible temperatures, which show by the value alone. */
export const markCodes = (celsius: Float64Array, reasons: Uint8Array): void => {
  for (let at = 0; at < celsius.length; at += 1) {
    if (reasons[at] !== good) continue;
    const reason = classifyTemperature(celsius[at]!);
    if (reason === null) continue;
    reasons[at] = reason === "sensor-fault" ? sensorFault : outOfRange;
    celsius[at] = Number.NaN;
  }
};

const markAll = (
  marks: Uint8Array,
  code: number,
  celsius: Float64Array,
  reasons: Uint8Array,
): void => {
  for (let at = 0; at < marks.length; at += 1) {
    if (marks[at] !== 1) continue;
    reasons[at] = code;
    celsius[at] = Number.NaN;
  }
};

/** Indexes of the cells that are numbers; null where all are. */
export const finiteCells = (celsius: Float64Array): Uint32Array | null => {
  let count = 0;
  for (const value of celsius) if (!Number.isNaN(value)) count += 1;
  if (count === celsius.length) return null;
  const indexes = new Uint32Array(count);
  let next = 0;
  for (let at = 0; at < celsius.length; at += 1) {
    if (Number.isNaN(celsius[at])) continue;
    indexes[next] = at;
    next += 1;
  }
  return indexes;
};

/** Marks power-on values and spikes, which show beside their neighbours; the rows are in order of time. */
export const markLeaps = (
  minutes: Float64Array,
  celsius: Float64Array,
  reasons: Uint8Array,
): void => {
  markAll(powerOnFaults(celsius), sensorFault, celsius, reasons);
  const finite = finiteCells(celsius);
  if (finite === null) {
    markAll(findSpikes(minutes, celsius), spike, celsius, reasons);
    return;
  }
  const marks = findSpikes(pick(minutes, finite), pick(celsius, finite));
  for (let at = 0; at < marks.length; at += 1) {
    if (marks[at] !== 1) continue;
    reasons[finite[at]!] = spike;
    celsius[finite[at]!] = Number.NaN;
  }
};
