/**
 * Numbers as text: a value and its uncertainty rounded together, and plain
 * fixed decimals.
 *
 * The rule is the Particle Data Group's (K. Nakamura et al., J. Phys. G 37,
 * 075021 (2010), introduction, section 5.3): of the uncertainty's three
 * leading digits, 100 to 354 keep two digits, 355 to 949 keep one, 950 to 999
 * round up to 1000 and keep two; the value takes the same decimal place. It
 * never shows more than the two digits JCGM 100:2008, 7.2.6 finds enough.
 */

export interface RoundedPair {
  readonly value: string;
  readonly uncertainty: string;
  readonly decimals: number;
}

/** Decimal places by the rule; may be negative for uncertainties above ten. */
export const decimalsFor = (uncertainty: number): number => {
  const exponent = Number(uncertainty.toExponential(2).split("e")[1]);
  const leading = Math.round((uncertainty / 10 ** exponent) * 100);
  if (leading >= 950) return -exponent;
  return leading <= 354 ? 1 - exponent : -exponent;
};

/** Rounded at that decimal place; a negative one stands before the point. */
export const atPlace = (value: number, decimals: number): string => {
  if (decimals >= 0) return fixed(value, decimals);
  const step = 10 ** -decimals;
  return fixed(Math.round(value / step) * step, 0);
};

/**
 * Both numbers at the uncertainty's last meaningful place. Needs a positive,
 * finite uncertainty; otherwise the value keeps two decimals and the
 * uncertainty reads "0".
 */
export const roundTogether = (value: number, uncertainty: number): RoundedPair => {
  if (!(uncertainty > 0) || !Number.isFinite(uncertainty)) {
    return { value: fixed(value, 2), uncertainty: "0", decimals: 2 };
  }
  const decimals = decimalsFor(uncertainty);
  return {
    value: atPlace(value, decimals),
    uncertainty: atPlace(uncertainty, decimals),
    decimals,
  };
};

/** The decimal point moved by `places`, on the number as it is printed: no binary remainder creeps in. */
const shifted = (value: number, places: number): number => {
  const [digits, exponent = "0"] = String(value).split("e");
  return Number(`${digits}e${Number(exponent) + places}`);
};

/** Fixed decimals, halves away from zero as printed (12.2135 gives 12.214); never "-0.0". */
export const fixed = (value: number, decimals: number): string => {
  const places = Math.min(Math.max(decimals, 0), 12);
  const units = Math.round(shifted(Math.abs(value), places));
  const size = shifted(units, -places).toFixed(places);
  return value < 0 && units !== 0 ? `-${size}` : size;
};

/** At most `decimals` decimals, trailing zeros gone: 38, 39.5. */
export const short = (value: number, decimals: number): string =>
  String(Number(fixed(value, decimals)));

/** Whole numbers with the thousands set apart: 43,200. */
export const grouped = (value: number): string =>
  fixed(value, 0).replaceAll(/\B(?=(\d{3})+$)/g, ",");

/**
 * A share or a probability, 0 to 1, in whole per cent; what rounds to 0 or 100
 * without being it reads "< 1 %" or "> 99 %".
 */
export const percent = (share: number, space: string): string => {
  if (share > 0 && share < 0.01) return `<${space}1${space}%`;
  if (share < 1 && share > 0.99) return `>${space}99${space}%`;
  return `${fixed(share * 100, 0)}${space}%`;
};

/** The same inside a sentence: "more than 99 %", "less than 1 %". */
export const percentInWords = (share: number, space: string): string =>
  percent(share, space).replace(`>${space}`, "more than ").replace(`<${space}`, "less than ");
