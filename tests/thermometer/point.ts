import type { CheckPoint, PointDoubt } from "../../src/thermometer/check-points.ts";
import type { CorrectionSource } from "../../src/thermometer/correction-model.ts";

/** A doubt of known size about a check point. */
export const doubtOf = (
  of: PointDoubt["of"],
  standardUncertainty: number,
  more: Partial<PointDoubt> = {},
): PointDoubt => {
  const source: CorrectionSource = of === "reading" ? "display step" : "statement";
  return {
    source,
    of,
    standardUncertainty,
    common: false,
    degreesOfFreedom: Infinity,
    from: "stated",
    ...more,
  };
};

export const pointAt = (
  reading: number,
  truth: number,
  ...doubts: readonly PointDoubt[]
): CheckPoint => ({ check: 0, reading, truth, doubts });

/**
 * JCGM 100:2008, H.3, table H.6: readings t and observed corrections b of a
 * thermometer, degC.
 */
export const guideReadings = [
  21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.01, 26.511,
] as const;
export const guideCorrections = [
  -0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.16,
] as const;
