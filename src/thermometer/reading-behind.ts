import type { CorrectionModel } from "./correction-model.ts";

/**
 * The reading that a correction turned into `celsius`: the model's line solved
 * for the reading, T = r + c + s (r - centre).
 *
 * @param celsius corrected temperature, degC
 */
export const readingBehind = (
  { centre, correction, slope }: CorrectionModel,
  celsius: number,
): number => (celsius - correction + slope * centre) / (1 + slope);
