import type { Level } from "../../src/hold/level.ts";

/** A level of 41 degC with an ordinary movement of `reach` either way. */
export const flatLevel = (reach = 0): Level => ({
  intercept: 41,
  slope: 0,
  approach: null,
  low: -reach,
  high: reach,
  noise: 0,
  variation: 0,
});
