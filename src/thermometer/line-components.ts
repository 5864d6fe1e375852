import type { CalibrationLine, LinePoint } from "./calibration-line.ts";
import type { PointDoubt } from "./check-points.ts";
import type { CorrectionComponent, LineDoubt } from "./correction-model.ts";

/** One source's errors, one per point that has it; degC of correction. */
interface SourceErrors {
  readonly doubt: PointDoubt;
  readonly errors: readonly { readonly point: LinePoint; readonly standardUncertainty: number }[];
}

const bySource = ({ points, slope }: CalibrationLine): readonly SourceErrors[] => {
  const sources = new Map<
    string,
    { doubt: PointDoubt; errors: SourceErrors["errors"][number][] }
  >();
  for (const point of points) {
    for (const doubt of point.point.doubts) {
      if (doubt.standardUncertainty === 0) continue;
      const sensitivity = doubt.of === "reading" ? 1 + slope : 1;
      const entry = sources.get(doubt.source) ?? { doubt, errors: [] };
      // One assumed among stated ones leaves the source assumed.
      if (doubt.from === "assumed") entry.doubt = doubt;
      const standardUncertainty = Math.abs(sensitivity) * doubt.standardUncertainty;
      entry.errors.push({ point, standardUncertainty });
      sources.set(doubt.source, entry);
    }
  }
  return [...sources.values()];
};

/** Errors that are one and the same for all points: they add up, with their signs. */
const together = ({ errors }: SourceErrors): LineDoubt => {
  let atCentre = 0;
  let perDegree = 0;
  for (const { point, standardUncertainty } of errors) {
    atCentre += point.atCentre * standardUncertainty;
    perDegree += point.perDegree * standardUncertainty;
  }
  const correlation = Math.sign(atCentre) * Math.sign(perDegree);
  return {
    shape: "line",
    atCentre: Math.abs(atCentre),
    perDegree: Math.abs(perDegree),
    correlation,
  };
};

/** Errors of each point's own: they add in quadrature (JCGM 100, 5.1.2). */
const apart = ({ errors }: SourceErrors): LineDoubt => {
  let centre = 0;
  let slope = 0;
  let both = 0;
  for (const { point, standardUncertainty } of errors) {
    const square = standardUncertainty * standardUncertainty;
    centre += point.atCentre ** 2 * square;
    slope += point.perDegree ** 2 * square;
    both += point.atCentre * point.perDegree * square;
  }
  const atCentre = Math.sqrt(centre);
  const perDegree = Math.sqrt(slope);
  const correlation = both === 0 ? 0 : Math.max(-1, Math.min(1, both / (atCentre * perDegree)));
  return { shape: "line", atCentre, perDegree, correlation };
};

/** What the weighted sum of squared residuals would be if the stated doubts were all there is. */
const expectedSquares = (line: CalibrationLine, sources: readonly SourceErrors[]): number => {
  let sum = 0;
  for (const source of sources) {
    const shared = together(source);
    const sign = shared.correlation < 0 ? -1 : 1;
    const own = new Map(source.errors.map((one) => [one.point, one.standardUncertainty]));
    for (const point of line.points) {
      const error = own.get(point) ?? 0;
      const away = point.point.reading - line.centre;
      if (source.doubt.common) {
        // The line takes up what of a common error has the shape of a line.
        const left = error - shared.atCentre - sign * shared.perDegree * away;
        sum += point.weight * left * left;
      } else {
        const leverage = point.atCentre + point.perDegree * away;
        sum += point.weight * error * error * (1 - leverage);
      }
    }
  }
  return sum;
};

/**
 * What the residuals show beyond the stated doubts: the excess of their
 * weighted sum of squares over its expectation, per degree of freedom, spread
 * over the line as the fit would (the Birge ratio squared, less one; Birge 1932,
 * Phys. Rev. 40, 207). With every stated doubt zero it is the plain residual
 * variance of JCGM 100, H.3. null where the residuals are as small as stated.
 */
const scatterOfChecks = (
  line: CalibrationLine,
  sources: readonly SourceErrors[],
): CorrectionComponent | null => {
  const { points, degreesOfFreedom } = line;
  if (degreesOfFreedom < 1) return null;
  let squares = 0;
  let centre = 0;
  let slope = 0;
  for (const { weight, residual, atCentre, perDegree } of points) {
    squares += weight * residual * residual;
    centre += (atCentre * atCentre) / weight;
    slope += (perDegree * perDegree) / weight;
  }
  const excess = (squares - expectedSquares(line, sources)) / degreesOfFreedom;
  if (!(excess > 0)) return null;
  return {
    source: "scatter of checks",
    shape: "line",
    atCentre: Math.sqrt(excess * centre),
    perDegree: Math.sqrt(excess * slope),
    correlation: 0,
    degreesOfFreedom,
    from: "measured",
  };
};

/**
 * The components of a fitted line's doubt, one per source: what each source's
 * errors do to the line (JCGM 100, 5.1 and 5.2 for those common to all points),
 * and what the residuals show beyond them.
 */
export const lineComponents = (line: CalibrationLine): readonly CorrectionComponent[] => {
  const sources = bySource(line);
  const components: CorrectionComponent[] = sources.map((source) => ({
    source: source.doubt.source,
    degreesOfFreedom: source.doubt.degreesOfFreedom,
    from: source.doubt.from,
    ...(source.doubt.common ? together(source) : apart(source)),
  }));
  const scatter = scatterOfChecks(line, sources);
  return scatter === null ? components : [...components, scatter];
};
