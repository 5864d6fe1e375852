import type { ResponseFigure } from "./container-response.ts";
import type { HeldMeans } from "./held-means.ts";
import type { RoomLevel } from "./room-level.ts";

/** Bath this near the room says nothing about what is lost to it, degC. */
const leastDifference = 3;

/**
 * phi, the share of the difference between bath and room that the food stands
 * below its bath in the steady state: (G - F) / (G - R), the means over the
 * hold of the bath as followed, the food and the room. Taking the followed bath
 * leaves out what the food still takes up while the bath rises or falls.
 * Standard uncertainty by JCGM 100, 5.1.2.
 *
 * @param apart standard uncertainty of the readings' difference of bath and food, degC
 * @param thermometer of the bath, standard uncertainty, degC
 * @returns null where the bath is less than 3 degC above the room
 */
export const shareLost = (
  means: HeldMeans,
  room: RoomLevel,
  lag: ResponseFigure | null,
  apart: number,
  thermometer: number,
): ResponseFigure | null => {
  const span = means.followed - room.mean;
  if (!(span >= leastDifference)) return null;
  const value = (means.followed - means.food) / span;
  const perMinute = lag === null ? 0 : (means.bath - means.followed) / lag.value;
  const stored = perMinute * (lag?.standardUncertainty ?? 0);
  const level = Math.hypot(room.standardUncertainty, thermometer);
  return { value, standardUncertainty: Math.hypot(apart, stored, value * level) / span };
};
