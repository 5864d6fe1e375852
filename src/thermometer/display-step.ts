import { celsiusToFahrenheit } from "../quantity.ts";

const mostDecimals = 3;
/** Step assumed where no readings tell it: usual for kitchen thermometers (common practice, no source). */
const assumedStep = 0.1;

/** Decimals a number needs, up to three; null when it needs more. */
const decimalsOf = (value: number): number | null => {
  for (let decimals = 0; decimals <= mostDecimals; decimals++) {
    const scaled = value * 10 ** decimals;
    // Numbers turned from degF and back are off in the last bits only.
    if (Math.abs(scaled - Math.round(scaled)) < 1e-6) return decimals;
  }
  return null;
};

const finest = (values: readonly number[]): number | null => {
  let most = 0;
  for (const value of values) {
    const decimals = decimalsOf(value);
    if (decimals === null) return null;
    most = Math.max(most, decimals);
  }
  return 10 ** -most;
};

/**
 * The step of a display nobody described, degC, from the decimals of what was
 * read from it: a power of ten of a degC, or of a degF where the readings have
 * few decimals only on that scale. A trailing zero that was not written makes
 * it coarser, so every reading of the thermometer is to be given.
 * 0.1 where there are no readings or none of this fits.
 */
export const inferredStep = (readings: readonly number[]): number => {
  if (readings.length === 0) return assumedStep;
  const inCelsius = finest(readings);
  if (inCelsius !== null) return inCelsius;
  const inFahrenheit = finest(readings.map(celsiusToFahrenheit));
  return inFahrenheit === null ? assumedStep : inFahrenheit / 1.8;
};
