import { orthogonalPart, orthonormal } from "../stats/orthonormal.ts";
import type { Course } from "./course.ts";
import { followBath } from "./follow-bath.ts";

/** What a lag is fitted to. The bath begins no later than the food and ends no earlier. */
export interface LagProblem {
  readonly bath: Course;
  readonly food: Course;
  /** null: the room is taken as steady. */
  readonly room: Course | null;
}

/**
 * What the food's readings leave unexplained by a lag of `lag` minutes, degC.
 *
 * With the lag given, the rest of the model is linear and is fitted along
 * (Golub & Pereyra 1973, variable projection):
 *
 *   F = G - phi (G - R) + c + A exp(-(t - t0) / tau)
 *
 * G and R being bath and room as followed with the lag: phi the share lost to
 * the room, c the thermometers' difference (and, for a steady room, phi times
 * the room), A what the food was off its bath at the start.
 */
export const lagResiduals = ({ bath, food, room }: LagProblem, lag: number): Float64Array => {
  const { minutes, celsius } = food;
  const followed = followBath(bath, lag, minutes);
  const surroundings = room === null ? null : followBath(room, lag, minutes);
  const towardsRoom =
    surroundings === null ? followed : followed.map((value, i) => value - surroundings[i]!);
  const start = bath.minutes[0]!;
  const basis = orthonormal([
    new Float64Array(minutes.length).fill(1),
    minutes.map((minute) => Math.exp((start - minute) / lag)),
    towardsRoom,
  ]);
  return orthogonalPart(
    celsius.map((value, i) => value - followed[i]!),
    basis,
  );
};

/** Parameters fitted to the food: lag, share lost, thermometers' difference, start. */
export const lagParameters = 4;

export const sumOfSquares = (values: Float64Array): number => {
  let squares = 0;
  for (let i = 0; i < values.length; i += 1) squares += values[i]! * values[i]!;
  return squares;
};
