/** A room within a known range: a daily wave about a level of its own for every run. */
import type { Random } from "./random.ts";

export interface RoomHabit {
  readonly low: number;
  readonly high: number;
}

/** One run's room: level + amplitude sin(2 pi (hour - 11) / 24), warmest at 17:00. */
export interface RoomWave {
  readonly level: number;
  readonly amplitude: number;
  /** Time of day at minute 0, hours. */
  readonly hourAtZero: number;
}

export function sampleRoomHabit(random: Random): RoomHabit {
  const low = random.uniform(15, 20.5);
  return { low, high: low + random.uniform(3, 7.5) };
}

/** Never leaves the habit's range. */
export function sampleRoomWave(random: Random, habit: RoomHabit, hourAtZero: number): RoomWave {
  const amplitude = random.uniform(0.3, Math.min(2.5, (habit.high - habit.low) / 2));
  return {
    amplitude,
    level: random.uniform(habit.low + amplitude, habit.high - amplitude),
    hourAtZero,
  };
}

export const roomAt = ({ level, amplitude, hourAtZero }: RoomWave, minute: number): number =>
  level + amplitude * Math.sin((2 * Math.PI * (hourAtZero + minute / 60 - 11)) / 24);
