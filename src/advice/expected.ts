import type { SetUp } from "../kitchen/kitchen.ts";
import { observationWeights, regressionPrediction } from "../stats/bayesian-regression.ts";
import { effectiveDegreesOfFreedom } from "../stats/effective-degrees-of-freedom.ts";
import { studentTQuantile } from "../stats/student-t.ts";
import type { RoomFigure } from "./advice-input.ts";
import type { DesignTerm } from "./response-design.ts";
import type { Response } from "./response.ts";
import type { ExpectedLevel } from "./response-types.ts";
import { thermometerDoubt, type ThermometerDoubt } from "../culture/thermometer-doubt.ts";

/** The next run's hold mean, with the doubts kept apart. */
export interface Expected {
  readonly mean: number;
  /** Student's t: figures and scatter of runs, degC. */
  readonly scale: number;
  readonly degreesOfFreedom: number;
  /** The room of that run, standard deviation, degC. */
  readonly room: number;
  readonly thermometer: ThermometerDoubt;
}

/**
 * What the next run of a set-up is expected to hold.
 *
 * @param room the room it may meet; else the kitchen's
 */
export const expectedRun = (
  response: Response,
  { setting, container }: Pick<SetUp, "setting" | "container">,
  room: RoomFigure = response.room,
): Expected => {
  const { design, fit, rows, weights, tests } = response;
  const place = { setting, room: room.mean, bath: 0 };
  const bath = regressionPrediction(fit, design.row({ ...place, container: null })).mean;
  const row = design.row({ ...place, container, bath });
  const { mean, scale, degreesOfFreedom } = regressionPrediction(fit, row);
  const shares = observationWeights(fit, rows, row, weights);
  return {
    mean,
    scale,
    degreesOfFreedom,
    room: roomSlope(response, container) * room.standardDeviation,
    thermometer: thermometerDoubt(
      tests.map(({ settled: { evidence } }, at) => ({
        thermometerId: evidence.thermometerId,
        thermometer: evidence.thermometer,
        share: shares[at]!,
      })),
    ),
  };
};

/** degC of the food per degC of the room: through the appliance and through the container. */
const roomSlope = ({ design: { terms }, fit }: Response, container: string): number => {
  const at = (wanted: (term: DesignTerm["term"]) => boolean): number => {
    const index = terms.findIndex(({ term }) => wanted(term));
    return index < 0 ? 0 : fit.coefficients[index]!;
  };
  const own = at(({ code }) => code === "room");
  const lost = at((term) => term.code === "share-lost" && term.container === container);
  return Math.min(1, Math.max(0, own) + Math.max(0, lost));
};

/** The same as one t distribution: variances added, degrees of freedom by Welch and Satterthwaite. */
export const expectedLevel = (expected: Expected): ExpectedLevel => {
  const { mean, scale, room, thermometer } = expected;
  const known = [room, thermometer.standardUncertainty];
  const standardUncertainty = Math.hypot(scale, ...known);
  const degreesOfFreedom = effectiveDegreesOfFreedom([
    { standardUncertainty: scale, degreesOfFreedom: expected.degreesOfFreedom },
    ...known.map((one) => ({ standardUncertainty: one, degreesOfFreedom: Infinity })),
  ]);
  const reach = studentTQuantile(0.975, degreesOfFreedom) * standardUncertainty;
  return { mean, standardUncertainty, degreesOfFreedom, low: mean - reach, high: mean + reach };
};
