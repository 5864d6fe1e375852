import type { CorrectionComponent, DistanceDoubt, LineDoubt } from "./correction-model.ts";

const ofLine = ({ atCentre, perDegree, correlation }: LineDoubt, away: number): number => {
  const atReading = perDegree * away;
  // As two perpendicular parts: no cancellation, and exact where one of them is nothing.
  const along = atCentre + correlation * atReading;
  return Math.hypot(along, Math.sqrt(Math.max(0, 1 - correlation * correlation)) * atReading);
};

const distanceTo = ({ checked, to }: DistanceDoubt, reading: number): number => {
  const lowest = Math.min(...checked);
  const highest = Math.max(...checked);
  if (to === "range") return Math.max(0, lowest - reading, reading - highest);
  return Math.min(...checked.map((one) => Math.abs(reading - one)));
};

const ofDistance = (doubt: DistanceDoubt, reading: number): number => {
  const grown = doubt.perDegree * Math.max(0, distanceTo(doubt, reading) - doubt.free);
  return doubt.most === null ? grown : Math.min(doubt.most, grown);
};

/**
 * Standard uncertainty, degC, that one component gives the correction at
 * `reading`; `centre` is the model's.
 */
export const componentUncertainty = (
  component: CorrectionComponent,
  centre: number,
  reading: number,
): number =>
  component.shape === "line" ? ofLine(component, reading - centre) : ofDistance(component, reading);
