import type { Series } from "../readings/series.ts";
import type { ContainerResponse } from "./container-response.ts";
import { gapLimit, usualStep } from "../stats/time-weights.ts";
import { type Course, gapsOf, outside, type Span, within } from "./course.ts";
import { fitLag } from "./fit-lag.ts";
import { heldMeans } from "./held-means.ts";
import { isMeasured, roomLevel, type RoomKnowledge } from "./room-level.ts";
import { shareLost } from "./share-lost.ts";
import { thinned } from "./thin-readings.ts";
import { unseenRoom } from "./unseen-room.ts";

/** A water test with a probe in the bath and one in the food. Minutes from one zero; degC, corrected. */
export interface ResponseInput {
  readonly bath: Series;
  /** May have its own rhythm of readings. */
  readonly food: Series;
  /** The hold of the food. */
  readonly hold: Span;
  /** Minute where heating starts, or where both probes began. */
  readonly from: number;
  /** Left out of the fit; the food goes on following its bath through them. */
  readonly disturbances?: readonly Span[];
  readonly room: RoomKnowledge | null;
  /** Standard uncertainties of the corrections: two probes at once are two thermometers, off independently. */
  readonly thermometers: {
    readonly bath: number;
    readonly food: number;
  };
}

/** More readings than this no longer sharpen a fit, they only take time. */
const mostReadings = 2000;
const leastHeld = 3;

/**
 * How the food follows its bath: tau dF/dt = (1 - phi) B + phi R - F, a lumped
 * body between bath and room (heat transfer textbooks).
 *
 * - `offset`: time-weighted mean of bath minus food over the part of the hold
 *   that both saw; uncertainty from scatter, thermometers and resolution.
 * - `lagMinutes`: least squares over warm-up and hold together; see `fitLag`.
 *   A clock of one logger that runs ahead of the other's goes into it in full.
 * - `shareLost`: from the offset and the room; see `shareLost`.
 *
 * Time linear in the readings.
 *
 * @returns null where fewer than 3 readings of the food in the hold have the bath beside them
 */
export const fitContainerResponse = (input: ResponseInput): ContainerResponse | null => {
  const { hold, thermometers } = input;
  const room = withReadings(input.room);
  const shared = sharedReadings(input);
  if (shared === null) return null;
  const { bath, food } = shared;
  const held = within(food, hold);
  if (held.minutes.length < leastHeld) return null;
  const plain = heldMeans(bath, held, null);
  const fixed = differenceUncertainty(input);
  const lagMinutes = fitLag(
    { bath, food, room: room !== null && isMeasured(room) ? reduced(room) : null },
    {
      resolution: Math.hypot(input.bath.resolution, input.food.resolution),
      unseenRoom: unseenRoom(room, plain, Math.hypot(plain.scatter, fixed)),
    },
  );
  const means = lagMinutes === null ? plain : heldMeans(bath, held, lagMinutes.value);
  const apart = Math.hypot(means.scatter, fixed);
  const level = roomLevel(
    room,
    { fromMinute: held.minutes[0]!, toMinute: held.minutes.at(-1)! },
    Math.max(thermometers.bath, thermometers.food),
  );
  return {
    offset: { value: means.bath - means.food, standardUncertainty: apart },
    lagMinutes,
    shareLost: level && shareLost(means, level, lagMinutes, apart, thermometers.bath),
    room: level && { mean: level.mean, from: level.from },
  };
};

/** A room probe without a reading is no room probe. */
const withReadings = (room: RoomKnowledge | null): RoomKnowledge | null =>
  room !== null && isMeasured(room) && room.minutes.length === 0 ? null : room;

const reduced = (course: Course): Course =>
  thinned(course, mostReadings, gapLimit(usualStep(course.minutes)));

/** Bath and food from the start to the end of the hold, the food only where the bath was read and nothing disturbed it. */
const sharedReadings = ({
  bath,
  food,
  hold,
  from,
  disturbances = [],
}: ResponseInput): { readonly bath: Course; readonly food: Course } | null => {
  const bathPart = reduced(within(bath, { fromMinute: from, toMinute: hold.toMinute }));
  if (bathPart.minutes.length < 2) return null;
  const limit = gapLimit(usualStep(bathPart.minutes));
  const seen = { fromMinute: bathPart.minutes[0]!, toMinute: bathPart.minutes.at(-1)! };
  const left = [...disturbances, ...gapsOf(bathPart, limit)];
  return { bath: bathPart, food: reduced(outside(within(food, seen), left)) };
};

/** Standard uncertainty of a difference of the two probes that no number of readings takes away, degC. */
const differenceUncertainty = ({ bath, food, thermometers }: ResponseInput): number => {
  const steps = Math.hypot(bath.resolution, food.resolution) / Math.sqrt(12);
  return Math.hypot(steps, thermometers.bath, thermometers.food);
};
