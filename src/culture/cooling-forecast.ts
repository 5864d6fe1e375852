import { normalCdf } from "../stats/normal.ts";
import type { CoolDownPrediction } from "./heating-types.ts";
import { minutesTo, timeConstantAtEnd, type CoolingFit } from "./newton-cooling.ts";
import type { Cooling } from "./read-cooling.ts";

/** What may change while it goes on cooling: a share of the time still to go, more where little was seen of it (our assumption). */
const changeShare = 0.03;
const changePerStretch = 0.02;
const mostStretches = 6;

/** Part of the fits, by weight, of which the answer rests on less is none. */
const leastWeight = 0.5;

/**
 * When a cooling pot comes down to `level`, degC: median and 95 % interval of
 * the fits' mixture, each a normal of its own time and uncertainty. The
 * interval has no upper end where 2.5 % or more of the weight never gets there.
 */
export const forecast = (cooling: Cooling, level: number): CoolDownPrediction | "levels-off" => {
  const arrivals = cooling.fits.map(({ fit, weight }) => arrival(fit, weight, cooling, level));
  const reached = arrivals.reduce((sum, one) => sum + (one.minutes < Infinity ? one.weight : 0), 0);
  if (reached <= leastWeight) return "levels-off";
  const within = (minutes: number): number =>
    arrivals.reduce((sum, one) => sum + one.weight * chanceBy(one, minutes), 0);
  const at = (share: number): number => cooling.end + quantile(within, share);
  const averages = meanLaw(cooling);
  return {
    minute: at(0.5),
    low: at(0.025),
    high: reached > 0.975 ? at(0.975) : null,
    ...averages,
  };
};

interface Arrival {
  readonly minutes: number;
  readonly uncertainty: number;
  readonly weight: number;
}

const arrival = (fit: CoolingFit, weight: number, cooling: Cooling, level: number): Arrival => {
  const { minutes, standardUncertainty } = minutesTo(fit, level);
  const stretches = Math.min(mostStretches, Math.max(0, minutes) / cooling.stretch);
  const change = (changeShare + changePerStretch * stretches) * Math.max(0, minutes);
  const own = standardUncertainty * Math.sqrt(cooling.inflation);
  // The last point stands for several readings, so it lies a little before the last of them.
  return { minutes: minutes + fit.end - cooling.end, uncertainty: Math.hypot(own, change), weight };
};

const chanceBy = ({ minutes, uncertainty }: Arrival, by: number): number => {
  if (minutes === Infinity) return 0;
  if (uncertainty === 0) return by >= minutes ? 1 : 0;
  return normalCdf((by - minutes) / uncertainty);
};

/** By doubling and bisection, never before the last reading. */
const quantile = (within: (minutes: number) => number, share: number): number => {
  if (within(0) >= share) return 0;
  let [low, high] = [0, 1];
  while (within(high) < share && high < 1e6) high *= 2;
  for (let step = 0; step < 60; step += 1) {
    const middle = (low + high) / 2;
    if (within(middle) < share) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
};

const meanLaw = ({
  fits,
}: Cooling): Pick<CoolDownPrediction, "timeConstantMinutes" | "surroundings"> => {
  let [timeConstantMinutes, surroundings] = [0, 0];
  for (const { fit, weight } of fits) {
    timeConstantMinutes += weight * timeConstantAtEnd(fit);
    surroundings += weight * fit.law.surroundings;
  }
  return { timeConstantMinutes, surroundings };
};
