import { describeBand } from "./band.ts";
import { findDrift } from "./drift.ts";
import { evenSeries } from "./even-grid.ts";
import type { Hold, HoldOptions, HoldReadings } from "./hold.ts";
import { hourMeans } from "./hour-means.ts";
import { meanUncertaintyOf } from "./mean-uncertainty.ts";
import { readingNoise } from "./noise.ts";
import { findSwing } from "./swing.ts";

/** All figures of the hold from its readings; `from` and `to` are its borders in minutes. */
export const describeHold = (
  readings: HoldReadings,
  from: number,
  to: number,
  options: HoldOptions,
): Hold => {
  const series = evenSeries(readings);
  const swing = findSwing(series);
  let minutesHeld = 0;
  for (const weight of readings.weights) minutesHeld += weight;
  return {
    fromMinute: from,
    toMinute: to,
    hours: minutesHeld / 60,
    ...describeBand(readings, options.share),
    ...meanUncertaintyOf(series, swing, readings.minutes.length),
    readings: readings.minutes.length,
    drift: findDrift(readings, series, swing),
    swing,
    noise: readingNoise(readings.celsius),
    hourMeans: hourMeans(readings),
  };
};
