import type { ResponseFigure } from "./container-response.ts";

/**
 * How much of a bath's swing reaches the food: the amplitude ratio
 * 1 / sqrt(1 + (2 pi tau / P)^2) of a first-order lag (heat transfer textbooks:
 * lumped body in a medium of sinusoidal temperature), with its standard
 * uncertainty carried over from the lag (JCGM 100, 5.1.2).
 *
 * @param lagMinutes tau, not negative
 * @param periodMinutes of the swing, above zero
 */
export const attenuation = (lagMinutes: ResponseFigure, periodMinutes: number): ResponseFigure => {
  const perMinute = (2 * Math.PI) / periodMinutes;
  const turns = perMinute * lagMinutes.value;
  const value = 1 / Math.sqrt(1 + turns ** 2);
  const slope = value ** 3 * turns * perMinute;
  return { value, standardUncertainty: slope * lagMinutes.standardUncertainty };
};
