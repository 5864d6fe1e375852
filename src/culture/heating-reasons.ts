import { gapOf } from "./heating-spells.ts";
import type { HeatingReason, HeatingSpell, HeatingStep } from "./heating-types.ts";
import type { HeatingReadings } from "./lethal-rate.ts";

/** Fewer readings inside a spell do not prove it (our choice). */
export const leastReadings = 4;

/** Readings further apart than this part of the asked minutes can hide a dip (our choice). */
const coarseShare = 0.2;

/** How many readings lie inside a spell. */
export const readingsIn = ({ minutes }: HeatingReadings, spell: HeatingSpell | null): number => {
  if (spell === null) return 0;
  let count = 0;
  for (const minute of minutes)
    if (minute >= spell.fromMinute && minute <= spell.toMinute) count += 1;
  return count;
};

type Found = Pick<
  HeatingStep,
  "target" | "longest" | "peak" | "heldAt" | "expandedUncertainty" | "verdict"
>;

/** Why, what tells most first; what is not seen between readings last. */
export const heatingReasons = (
  found: Found,
  readings: HeatingReadings,
): readonly HeatingReason[] => [
  ...lengthReason(found),
  ...nearReason(found),
  ...hiddenReasons(found, readings),
  ...coarseReasons(found, readings),
];

const lengthReason = ({ longest, target, peak }: Found): HeatingReason[] => {
  if (longest === null) return [{ code: "never-reached", peak }];
  const missingMinutes = target.minutes - longest.minutes;
  return missingMinutes > 0 ? [{ code: "too-short", missingMinutes }] : [];
};

/** The held level lies nearer to the target than the thermometer can tell. */
const nearReason = ({
  heldAt,
  target,
  expandedUncertainty: expanded,
  verdict,
}: Found): HeatingReason[] => {
  const margin = heldAt === null ? -Infinity : heldAt - target.celsius;
  const near = verdict === "unproven" && Math.abs(margin) < expanded;
  return near ? [{ code: "near-target", margin, expanded }] : [];
};

const hiddenReasons = ({ target, verdict }: Found, readings: HeatingReadings): HeatingReason[] => {
  if (verdict === "holds") return [];
  const { minutes, celsius } = readings;
  const hot = (index: number): boolean => (celsius[index] ?? -Infinity) >= target.celsius;
  const reasons: HeatingReason[] = [];
  if (hot(0)) reasons.push({ code: "log-starts-hot" });
  if (hot(minutes.length - 1)) reasons.push({ code: "log-ends-hot" });
  const gap = gapOf(readings);
  let longest = 0;
  for (let index = 1; index < minutes.length; index += 1) {
    const apart = minutes[index]! - minutes[index - 1]!;
    if (apart >= gap && (hot(index - 1) || hot(index))) longest = Math.max(longest, apart);
  }
  if (longest > 0) reasons.push({ code: "gap", minutes: longest });
  return reasons;
};

const coarseReasons = ({ longest, target }: Found, readings: HeatingReadings): HeatingReason[] => {
  if (longest === null) return [];
  const count = readingsIn(readings, longest);
  const intervalMinutes = longestInterval(readings, longest);
  const reasons: HeatingReason[] = [];
  if (longest.minutes >= target.minutes && count < leastReadings)
    reasons.push({ code: "few-readings", readings: count });
  if (intervalMinutes > coarseShare * target.minutes)
    reasons.push({ code: "coarse", intervalMinutes });
  return reasons;
};

/** Longest time between two readings that the spell reaches into. */
const longestInterval = ({ minutes }: HeatingReadings, spell: HeatingSpell): number => {
  let longest = 0;
  for (let index = 1; index < minutes.length; index += 1) {
    const inside = minutes[index]! > spell.fromMinute && minutes[index - 1]! < spell.toMinute;
    if (inside) longest = Math.max(longest, minutes[index]! - minutes[index - 1]!);
  }
  return longest;
};
