import { celsiusDifference } from "../quantity.ts";
import type { ThermometerStatement } from "../thermometer/budget.ts";
import { mean } from "../stats/summary.ts";
import { thermometerDoubt, type NamedThermometer } from "./thermometer-doubt.ts";

const least: readonly ThermometerStatement["from"][] = ["assumed", "stated", "measured"];

/**
 * What is known of the thermometers behind the mean of several tests.
 *
 * One thermometer is off alike in all its tests, so its doubt enters once and
 * no number of tests takes it away. Different thermometers are off
 * independently: each test's share of the mean is 1/n, so a thermometer used in
 * k of n tests gives k/n of its doubt, and these add as squares
 * (JCGM 100:2008, 5.1.2 and 5.2.2, correlation 1 within a thermometer, 0
 * between). The rectangle of a specification stays one where there is a single
 * thermometer; from several it is taken as normal, which has the longer tails.
 *
 * @param tests one per test, at least one; a single one comes back as it is
 */
export const pooledThermometer = (tests: readonly NamedThermometer[]): ThermometerStatement => {
  const [first] = tests;
  if (first === undefined) throw new RangeError("no thermometer to pool");
  if (tests.length === 1) return first.thermometer;
  const share = 1 / tests.length;
  const { standardUncertainty, halfWidth } = thermometerDoubt(
    tests.map(({ thermometerId, thermometer }) => ({ thermometerId, thermometer, share })),
  );
  const statements = tests.map(({ thermometer }) => thermometer);
  return {
    correction: celsiusDifference(mean(statements.map(({ correction }) => correction))),
    standardUncertainty: celsiusDifference(standardUncertainty),
    from: least.find((from) => statements.some((one) => one.from === from))!,
    accuracy: halfWidth === null ? null : celsiusDifference(halfWidth),
  };
};
