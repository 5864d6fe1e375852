import { describe, expect, it } from "vitest";
import type { ResponseFigure } from "../../src/container/container-response.ts";
import { fitContainerResponse, type ResponseInput } from "../../src/container/fit-response.ts";
import { createRandom } from "../simulator/random.ts";
import { course, seriesOf, warmingBath, warmingFood } from "./courses.ts";
import { simulatedPairs } from "./simulated-pair.ts";

const random = createRandom(2, "fit-response");
const read = (value: number): number => Math.round((value + random.normal(0, 0.03)) * 100) / 100;

/** Closed form of courses.ts, lag 25 min, 5 % of the way to a room of 21 degC lost; bath every 20 s, food every minute. */
const night = (more: Partial<ResponseInput> = {}, foodAt: (minute: number) => number = lossy) => ({
  bath: seriesOf(
    "bath",
    course(1 / 3, 600, (minute) => read(warmingBath(minute))),
  ),
  food: seriesOf(
    "food",
    course(1, 600, (minute) => read(foodAt(minute))),
  ),
  from: 0,
  hold: { fromMinute: 250, toMinute: 600 },
  room: { low: 20.5, high: 21.5 },
  thermometers: { bath: 0.1, food: 0.2 },
  ...more,
});
const lossy = (minute: number): number => 0.95 * warmingFood(25)(minute) + 0.05 * 21;

const near = (figure: ResponseFigure | null, truth: number): void => {
  expect(figure).not.toBeNull();
  expect(Math.abs(figure!.value - truth)).toBeLessThan(3 * figure!.standardUncertainty);
};

const apart = (bath: number, food: number) =>
  fitContainerResponse(night({ thermometers: { bath, food } }))!.offset.standardUncertainty;
const lifted = (minute: number) => (minute > 100 && minute < 110 ? 22 : lossy(minute));

describe("fitContainerResponse", () => {
  it("finds lag, offset and share lost of a food in closed form", () => {
    const { offset, lagMinutes, shareLost, room } = fitContainerResponse(night())!;
    near(lagMinutes, 25);
    expect(lagMinutes!.standardUncertainty).toBeLessThan(1);
    // 5 % of 41 - 21 degC.
    near(offset, 1);
    near(shareLost, 0.05);
    expect(room).toEqual({ mean: 21, from: "stated" });
  });

  it("does not take a difference between the thermometers for lag", () => {
    const { lagMinutes } = fitContainerResponse(night({}, (minute) => lossy(minute) + 0.9))!;
    near(lagMinutes, 25);
  });

  it("counts both thermometers' doubts and both display steps", () => {
    expect(apart(0.1, 0.2)).toBeCloseTo(Math.hypot(0.1, 0.2), 2);
    // Two display steps of 0.01 degC and next to no scatter.
    expect(apart(0, 0)).toBeGreaterThanOrEqual(0.01 * Math.sqrt(2 / 12));
    expect(apart(0, 0)).toBeLessThan(0.01);
  });

  it("leaves disturbances out and follows the bath through them", () => {
    // The food's probe hung in the air for ten minutes; the bath went on as before.
    const spell = { fromMinute: 100, toMinute: 110 };
    near(fitContainerResponse(night({ disturbances: [spell] }, lifted))!.lagMinutes, 25);
    const fooled = fitContainerResponse(night({}, lifted))!.lagMinutes;
    expect(fooled === null || fooled.standardUncertainty > 1).toBe(true);
  });

  it("gives no share lost without a room, or with a bath as warm as the room", () => {
    const unknown = fitContainerResponse(night({ room: null }))!;
    expect([unknown.shareLost, unknown.room]).toEqual([null, null]);
    const warm = fitContainerResponse(night({ room: { low: 37, high: 41 } }))!;
    expect(warm.shareLost).toBeNull();
    expect(warm.room).toEqual({ mean: 39, from: "stated" });
  });

  it("uses a room probe", () => {
    const room = seriesOf(
      "room",
      course(5, 600, () => 21),
    );
    const { shareLost, room: known } = fitContainerResponse(night({ room }))!;
    near(shareLost, 0.05);
    expect(known).toEqual({ mean: 21, from: "measured" });
  });

  it("says nothing where bath and food were not read together in the hold", () => {
    expect(fitContainerResponse(night({ hold: { fromMinute: 700, toMinute: 900 } }))).toBeNull();
    const early = seriesOf("bath", course(1, 200, warmingBath));
    expect(fitContainerResponse(night({ bath: early }))).toBeNull();
    const nothing = seriesOf(
      "bath",
      course(1, -1, () => 0),
    );
    expect(fitContainerResponse(night({ bath: nothing }))).toBeNull();
  });
});

describe("its 95 % intervals, on simulated jars", () => {
  it("hold the truth as often as they say", { timeout: 60_000 }, () => {
    const pairs = simulatedPairs(80);
    const fits = pairs.map(({ input, truth }) => ({ truth, fit: fitContainerResponse(input)! }));
    const scores = (
      pick: (one: (typeof fits)[number]) => readonly [ResponseFigure | null, number],
    ): readonly number[] =>
      fits
        .map(pick)
        .flatMap(([figure, truth]) =>
          figure === null ? [] : [(figure.value - truth) / figure.standardUncertainty],
        );
    const found = {
      lag: scores(({ fit, truth }) => [fit.lagMinutes, truth.lag]),
      offset: scores(({ fit, truth }) => [fit.offset, truth.offset]),
      share: scores(({ fit, truth }) => [fit.shareLost, truth.share]),
    };
    for (const [name, values] of Object.entries(found)) {
      // Few nights say nothing: readings every 10 min cannot show a lag of 8.
      expect(values.length, name).toBeGreaterThan(68);
      // 95 % of 80, less twice the binomial standard deviation of 2.4 %; and not idly wide.
      const inside = values.filter((z) => Math.abs(z) < 1.96).length / values.length;
      expect(inside, name).toBeGreaterThan(0.9);
      const rms = Math.sqrt(values.reduce((sum, z) => sum + z * z, 0) / values.length);
      expect(rms, name).toBeGreaterThan(0.6);
      expect(rms, name).toBeLessThan(1.3);
    }
  });
});
