import { orthogonalPart, orthonormal } from "../stats/orthonormal.ts";
import type { Course } from "./course.ts";
import { followBath } from "./follow-bath.ts";

/** What a lag is fitted to. The bath begins no later than the food and ends no earlier. */
export interface LagProblem {
  readonly bath: Course;
  readonly food: Course;
  /** null: nobody measured the room; it is taken to change slowly and smoothly. */
  readonly room: Course | null;
}

/** Parameters fitted to the food at most: lag, difference, start, share lost, and two for the room. */
export const lagParameters = 6;

/**
 * What the food's readings leave unexplained by a lag of `lag` minutes, degC.
 *
 * With the lag given, the rest of the model is linear and is fitted along
 * (Golub & Pereyra 1973, variable projection):
 *
 *   F = G - phi (G - R) + c + A exp(-(t - t0) / tau)
 *
 * G and R being bath and room as followed with the lag: phi the share lost to
 * the room, c the thermometers' difference, A what the food was off its bath
 * at the start. For a room nobody measured a parabola in time stands for phi R.
 */
export const lagResiduals = ({ bath, food, room }: LagProblem, lag: number): Float64Array => {
  const { minutes, celsius } = food;
  const followed = followBath(bath, lag, minutes);
  const since = minutes.map((minute) => minute - bath.minutes[0]!);
  const basis = orthonormal([
    new Float64Array(minutes.length).fill(1),
    since.map((minute) => Math.exp(-minute / lag)),
    ...roomColumns(room === null ? null : followBath(room, lag, minutes), followed, since),
  ]);
  return orthogonalPart(
    celsius.map((value, i) => value - followed[i]!),
    basis,
  );
};

const roomColumns = (
  room: Float64Array | null,
  followed: Float64Array,
  since: Float64Array,
): readonly Float64Array[] =>
  room === null
    ? [followed, since, since.map((minute) => minute ** 2)]
    : [followed.map((value, i) => value - room[i]!)];

export const sumOfSquares = (values: Float64Array): number => {
  let squares = 0;
  for (let i = 0; i < values.length; i += 1) squares += values[i]! * values[i]!;
  return squares;
};
