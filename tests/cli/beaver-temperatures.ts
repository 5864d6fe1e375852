/**
 * Body temperatures of two beavers by telemetry, every ten minutes, degC: the
 * values of R's `beaver1` and `beaver2`, from P. S. Reynolds (1994),
 * "Time-series analyses of beaver body temperatures", chapter 11 of Lange et
 * al. (eds.), Case Studies in Biometry, Wiley. The reading of 22:20 is missing
 * from the first. Check sums, recomputed with Python's statistics module: mean
 * 36.862193 and standard deviation 0.193422 (n 114); 37.5967 and 0.446789
 * (n 100).
 */
export interface TelemetrySeries {
  /** Of the first reading, as if in UTC: days 346 and 307 of 1990. */
  readonly start: number;
  readonly celsius: readonly number[];
  /** Number of ten-minute steps before each reading, where it is not its index. */
  readonly missingBefore: number | null;
}

const values = (text: string): readonly number[] => text.trim().split(/\s+/).map(Number);

export const beaver1: TelemetrySeries = {
  start: Date.UTC(1990, 11, 12, 8, 40),
  missingBefore: 82,
  celsius: values(`
    36.33 36.34 36.35 36.42 36.55 36.69 36.71 36.75 36.81 36.88 36.89 36.91 36.85 36.89 36.89
    36.67 36.5 36.74 36.77 36.76 36.78 36.82 36.89 36.99 36.92 36.99 36.89 36.94 36.92 36.97
    36.91 36.79 36.77 36.69 36.62 36.54 36.55 36.67 36.69 36.62 36.64 36.59 36.65 36.75 36.8
    36.81 36.87 36.87 36.89 36.94 36.98 36.95 37 37.07 37.05 37 36.95 37 36.94 36.88 36.93 36.98
    36.97 36.85 36.92 36.99 37.01 37.1 37.09 37.02 36.96 36.84 36.87 36.85 36.85 36.87 36.89
    36.86 36.91 37.53 37.23 37.2 37.25 37.2 37.21 37.24 37.1 37.2 37.18 36.93 36.83 36.93 36.83
    36.8 36.75 36.71 36.73 36.75 36.72 36.76 36.7 36.82 36.88 36.94 36.79 36.78 36.8 36.82 36.84
    36.86 36.88 36.93 36.97 37.15`),
};

export const beaver2: TelemetrySeries = {
  start: Date.UTC(1990, 10, 3, 9, 30),
  missingBefore: null,
  celsius: values(`
    36.58 36.73 36.93 37.15 37.23 37.24 37.24 36.9 36.95 36.89 36.95 37 36.9 36.99 36.99 37.01
    37.04 37.04 37.14 37.07 36.98 37.01 36.97 36.97 37.12 37.13 37.14 37.15 37.17 37.12 37.12
    37.17 37.28 37.28 37.44 37.51 37.64 37.51 37.98 38.02 38 38.24 38.1 38.24 38.11 38.02 38.11
    38.01 37.91 37.96 38.03 38.17 38.19 38.18 38.15 38.04 37.96 37.84 37.83 37.84 37.74 37.76
    37.76 37.64 37.63 38.06 38.19 38.35 38.25 37.86 37.95 37.95 37.76 37.6 37.89 37.86 37.71
    37.78 37.82 37.76 37.81 37.84 38.01 38.1 38.15 37.92 37.64 37.7 37.46 37.41 37.46 37.56
    37.55 37.75 37.76 37.73 37.77 38.01 38.04 38.07`),
};

/** The series as a logger would write it. */
export const asCsv = ({ start, celsius, missingBefore }: TelemetrySeries): string => {
  const rows = celsius.map((value, index) => {
    const step = missingBefore !== null && index >= missingBefore ? index + 1 : index;
    return `${new Date(start + step * 600_000).toISOString().slice(0, 16)},${value}`;
  });
  return `Time,Temperature (°C)\n${rows.join("\n")}\n`;
};
