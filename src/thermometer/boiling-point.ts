import { saturationTemperature } from "./saturation.ts";
import { pressureAtAltitude, stationPressure } from "./standard-atmosphere.ts";
import type { BoilingPlace } from "./thermometer.ts";

/** Where water boils at a place, and how well that is known. */
export interface BoilingPoint {
  /** degC. */
  readonly celsius: number;
  /** Standard uncertainty from the pressure alone, degC. */
  readonly standardUncertainty: number;
  /** Pressure on the spot, hPa. */
  readonly pressure: number;
  readonly how: "station pressure" | "sea-level pressure" | "altitude";
}

/**
 * Standard uncertainties, common practice from memory, no source: a barometer
 * read on the spot is good to 1 hPa; a weather service's figure for the nearest
 * town, reduced and taken up again, to 1.5 hPa; an altitude from a map to 10 m.
 */
const stationUncertainty = 1; // hPa
const seaLevelUncertainty = 1.5; // hPa
const altitudeUncertainty = 10; // m
/** One standard deviation of the day's pressure about its mean, from memory. */
const weather = 8; // hPa

/** Pressures on the spot outside of this are slips of the pen: hPa at about 5,500 m and -700 m. */
const lowestPressure = 500;
const highestPressure = 1100;

/** Fall of pressure, hPa per metre, near an altitude: p g M / (R T), T about 15 degC. */
const perMetre = (pressure: number): number =>
  (pressure * 9.80665 * 0.0289644) / (8.31432 * 288.15);

const boilingAt = (
  pressure: number,
  pressureUncertainty: number,
  how: BoilingPoint["how"],
): BoilingPoint | null => {
  if (!(pressure >= lowestPressure && pressure <= highestPressure)) return null;
  const [celsius, above, below] = [pressure, pressure + 0.5, pressure - 0.5].map(
    saturationTemperature,
  );
  if (celsius == null || above == null || below == null) return null;
  return { celsius, standardUncertainty: (above - below) * pressureUncertainty, pressure, how };
};

/**
 * Boiling point of water at a place: the pressure on the spot, from the best
 * that was stated (a station pressure; a sea-level pressure with the altitude;
 * the altitude in the standard atmosphere), then the saturation line of
 * IAPWS-IF97. null where nothing is known, or nothing that can be.
 */
export const boilingPoint = ({ altitude, pressure }: BoilingPlace): BoilingPoint | null => {
  if (pressure?.reduced === "station")
    return boilingAt(pressure.hectopascal, stationUncertainty, "station pressure");
  if (altitude === null) return null;
  const spot =
    pressure === null
      ? pressureAtAltitude(altitude)
      : stationPressure(pressure.hectopascal, altitude);
  if (spot === null) return null;
  const fromAltitude = altitudeUncertainty * perMetre(spot);
  return pressure === null
    ? boilingAt(spot, Math.hypot(weather, fromAltitude), "altitude")
    : boilingAt(spot, Math.hypot(seaLevelUncertainty, fromAltitude), "sea-level pressure");
};
