/**
 * What is assumed of an appliance before anything was tested. All figures are
 * this project's assumptions (common practice, no source) and stand in the
 * report beside what the tests made of them. Means and standard deviations, degC.
 */
import { roomPassed } from "../culture/slow-prior.ts";
import type { Appliance, ApplianceKind, Container, ContainerStand } from "../kitchen/kitchen.ts";

export interface PriorFigure {
  readonly mean: number;
  readonly standardDeviation: number;
}

const figure = (mean: number, standardDeviation: number): PriorFigure => ({
  mean,
  standardDeviation,
});

/** Settings and levels are counted from here: about where cultures are kept. */
export const middleLevel = 40;

/** One run about the response, and how many runs the assumption counts as. */
export const scatterPrior = { standardDeviation: 0.18, degreesOfFreedom: 8 } as const;

/** Level at a setting of 40 degC, and degC per degC of the setting: regulated baths follow their display best. */
const stepPriors: Readonly<
  Record<ApplianceKind, { readonly level: PriorFigure; readonly slope: PriorFigure }>
> = {
  "circulating bath": { level: figure(middleLevel, 1), slope: figure(1, 0.03) },
  "water bath": { level: figure(middleLevel, 1.5), slope: figure(1, 0.04) },
  cooker: { level: figure(middleLevel, 2.5), slope: figure(1, 0.06) },
  "warming box": { level: figure(middleLevel, 3), slope: figure(1, 0.07) },
  other: { level: figure(middleLevel, 3), slope: figure(1, 0.07) },
};

export const stepPrior = ({ kind }: Pick<Appliance, "kind">) => stepPriors[kind];

/** A fixed control, or a program: its name tells nothing that could be relied on. */
export const programPrior = figure(middleLevel, 6);

/** The middle of a dial; its marks together span some 22 degC, hardly ever the wrong way round. */
export const dialPrior = figure(middleLevel, 6);
const dialSpan = 22;
export const markSlopePrior = (marks: number): PriorFigure => {
  const even = dialSpan / Math.max(1, marks - 1);
  return figure(even, 0.25 * even);
};
/** By how much one step of a dial is more or less than an even one, as part of it: numbers on a dial are printed, not measured. */
const markUnevenness = 0.3;
export const markPrior = (marks: number): PriorFigure =>
  figure(0, (markUnevenness * dialSpan) / Math.max(1, marks - 1));

/**
 * degC per degC of the room: a thermostat lets little through, a heater of fixed
 * power nearly all. Where nobody knows which, a brisk warm-up tells, as it does
 * for the verdict.
 *
 * @param warmUpMinutes the quickest that was seen; null where none was
 */
export const roomPrior = (
  thermostat: boolean | null,
  warmUpMinutes: number | null = null,
): PriorFigure => {
  if (thermostat === true) return figure(0.05, 0.06);
  if (thermostat === false) return figure(0.85, 0.2);
  return roomPassed({ cycling: false, roomRange: null, warmUpMinutes });
};

/**
 * Share of bath minus room by which food stands below its bath. In the basin
 * the food is the bath, and only places within it differ.
 */
const lostShares: Readonly<Record<ContainerStand, PriorFigure>> = {
  basin: figure(0.002, 0.004),
  "jars in water": figure(0.02, 0.015),
  "jars in air": figure(0.08, 0.04),
};
export const lostSharePrior = ({ stands }: Pick<Container, "stands">): PriorFigure =>
  lostShares[stands];

/** Time constants, minutes, of half a litre; as the cube root of the volume squared: mass over surface times size. */
const lags: Readonly<Record<ContainerStand, number>> = {
  basin: 2,
  "jars in water": 14,
  "jars in air": 80,
};
const usualVolume = 0.5;
/** Relative standard deviation of an assumed lag. */
const lagSpread = 0.5;

export const lagPrior = ({ stands, volume }: Pick<Container, "stands" | "volume">): PriorFigure => {
  const size = stands === "basin" ? 1 : ((volume ?? usualVolume) / usualVolume) ** (2 / 3);
  const mean = lags[stands] * Math.min(4, Math.max(0.25, size));
  return figure(mean, lagSpread * mean);
};

/** A kitchen where nobody said, degC. */
export const usualRoom = figure(21, 2.5);

/** Water leaves no air for jars to stand in; a box of warm air has no basin of its own. */
export const standsIn = (kind: ApplianceKind, stands: ContainerStand): boolean => {
  if (kind === "water bath" || kind === "circulating bath") return stands !== "jars in air";
  return kind !== "warming box" || stands !== "basin";
};
