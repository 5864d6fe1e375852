/** US Standard Atmosphere 1976, lowest layer. */
const seaLevelPressure = 1013.25; // hPa
const seaLevelTemperature = 288.15; // K
const lapse = 0.0065; // K per geopotential metre
const earthRadius = 6_356_766; // m
/** g0 M / (R* L), with g0 9.80665 m/s^2, M 28.9644 kg/kmol, R* 8314.32 J/(kmol K). */
const exponent = (9.80665 * 28.9644) / (8314.32 * lapse);

const lowest = -500;
const highest = 5000;

/** Geometric to geopotential height, metres. */
const geopotential = (height: number): number => (earthRadius * height) / (earthRadius + height);

const pressureAt = (altitude: number): number =>
  seaLevelPressure * (1 - (lapse * geopotential(altitude)) / seaLevelTemperature) ** exponent;

/**
 * Air pressure, hPa, at `altitude`, metres above sea level (geometric height).
 *
 * Source: US Standard Atmosphere 1976. A long-run figure: weather moves the
 * pressure of a day about it. null outside -500 to 5,000 m.
 */
export const pressureAtAltitude = (altitude: number): number | null =>
  altitude >= lowest && altitude <= highest ? pressureAt(altitude) : null;

/**
 * Altitude, metres, at which the standard atmosphere has that pressure, hPa:
 * the inverse of `pressureAtAltitude`. null outside -500 to 5,000 m.
 */
export const altitudeOfPressure = (hectopascal: number): number | null => {
  // A hair wider than the range, so that its ends survive the way there and back.
  const hair = 1e-9;
  if (!(hectopascal >= pressureAt(highest) * (1 - hair))) return null;
  if (!(hectopascal <= pressureAt(lowest) * (1 + hair))) return null;
  const ratio = (hectopascal / seaLevelPressure) ** (1 / exponent);
  const height = (seaLevelTemperature / lapse) * (1 - ratio);
  return (earthRadius * height) / (earthRadius - height);
};

/**
 * Pressure on the spot, hPa, from one that weather services give reduced to
 * sea level, scaled by the standard atmosphere's ratio p(altitude) / p(0).
 * Services use the day's air temperature instead; near 1,000 m that differs by
 * 1 to 3 hPa on hot or cold days (from memory). null outside -500 to 5,000 m.
 */
export const stationPressure = (seaLevel: number, altitude: number): number | null => {
  const standard = pressureAtAltitude(altitude);
  return standard === null ? null : (seaLevel * standard) / seaLevelPressure;
};
