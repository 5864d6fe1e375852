/**
 * Saturation line of water: pressure and temperature at which liquid and
 * steam stand in balance.
 *
 * Source: IAPWS R7-97(2012), Industrial Formulation 1997, region 4, equations
 * 29 to 31 (one quadratic form solved either way).
 */
const n1 = 1167.0521452767;
const n2 = -724213.16703206;
const n3 = -17.073846940092;
const n4 = 12020.82470247;
const n5 = -3232555.0322333;
const n6 = 14.91510861353;
const n7 = -4823.2657361591;
const n8 = 405113.40542057;
const n9 = -0.23855557567849;
const n10 = 650.17534844798;

const zero = 273.15;
const critical = 647.096; // K
const hectopascalPerMegapascal = 10_000;
const lowestPressure = 6.11213; // hPa, at 273.15 K
const criticalPressure = 220_640; // hPa

/** Pressure, hPa, at which water boils at `celsius`, degC. null outside 0 to 373.946 degC. */
export const saturationPressure = (celsius: number): number | null => {
  const kelvin = celsius + zero;
  if (!(kelvin >= zero && kelvin <= critical)) return null;
  const theta = kelvin + n9 / (kelvin - n10);
  const a = theta * theta + n1 * theta + n2;
  const b = n3 * theta * theta + n4 * theta + n5;
  const c = n6 * theta * theta + n7 * theta + n8;
  const root = (2 * c) / (-b + Math.sqrt(b * b - 4 * a * c));
  return root ** 4 * hectopascalPerMegapascal;
};

/**
 * Temperature, degC (ITS-90), at which water boils under `hectopascal`, hPa.
 * null outside 6.11213 to 220,640 hPa.
 */
export const saturationTemperature = (hectopascal: number): number | null => {
  if (!(hectopascal >= lowestPressure && hectopascal <= criticalPressure)) return null;
  const beta = (hectopascal / hectopascalPerMegapascal) ** 0.25;
  const e = beta * beta + n3 * beta + n6;
  const f = n1 * beta * beta + n4 * beta + n7;
  const g = n2 * beta * beta + n5 * beta + n8;
  const d = (2 * g) / (-f - Math.sqrt(f * f - 4 * e * g));
  return (n10 + d - Math.sqrt((n10 + d) ** 2 - 4 * (n9 + n10 * d))) / 2 - zero;
};
