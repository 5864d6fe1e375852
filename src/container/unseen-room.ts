import type { HeldMeans } from "./held-means.ts";
import { isMeasured, type RoomKnowledge } from "./room-level.ts";

/** Where nobody said anything: a heated room and how it changes over a night (assumptions), degC. */
const assumedRoom = { middle: 21, standardDeviation: 1 } as const;
const leastDifference = 3;

/**
 * Standard deviation of what changes of the room do to the food, degC, where
 * no probe saw the room; 0 where one did. The share lost (as far as it may
 * reach) times the room's standard deviation: width / sqrt(12) of a stated range.
 *
 * @param means bath and food over the hold
 * @param apart standard uncertainty of their difference, degC
 */
export const unseenRoom = (room: RoomKnowledge | null, means: HeldMeans, apart: number): number => {
  if (room !== null && isMeasured(room)) return 0;
  const middle = room === null ? assumedRoom.middle : (room.low + room.high) / 2;
  const changes =
    room === null ? assumedRoom.standardDeviation : (room.high - room.low) / Math.sqrt(12);
  const share =
    Math.hypot(means.bath - means.food, apart) / Math.max(leastDifference, means.bath - middle);
  return Math.min(1, share) * changes;
};
