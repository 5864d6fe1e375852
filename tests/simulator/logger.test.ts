import { describe, expect, it } from "vitest";
import { probeCourse, readings, readingTimes, sampleLogger, type Logger } from "./logger.ts";
import { createRandom } from "./random.ts";
import type { Trace } from "./run.ts";

const logger: Logger = {
  error: 0.4,
  lagSeconds: 60,
  noise: 0.1,
  resolution: 0.1,
  intervalSeconds: 30,
  statement: [],
  lostShare: 0,
  gap: false,
  glitches: 0,
  faults: [],
};

const traceOf = (food: (seconds: number) => number): Trace => {
  const course = Float64Array.from({ length: 36_001 }, (_, at) => food(at * 10));
  const room = course.map(() => 20);
  return { fromSeconds: 0, stepSeconds: 10, food: course, bath: course, room, power: room };
};

const random = () => createRandom(1, "logger");

describe("sampleLogger", () => {
  it("draws an error that its statement allows", () => {
    for (let seed = 0; seed < 2000; seed += 1) {
      const drawn = sampleLogger(createRandom(seed, "logger"));
      const [option, value] = drawn.statement;
      if (option === "--thermometer-accuracy")
        expect(Math.abs(drawn.error)).toBeLessThanOrEqual(Number(value));
      else {
        // reading + correction = truth, to within the stated standard uncertainty: 4.5 of it.
        const left = drawn.error + Number(option!.split("=")[1]);
        expect(Math.abs(left)).toBeLessThan(4.5 * Number(drawn.statement[2]));
      }
    }
  });
});

describe("readings", () => {
  const steady = traceOf(() => 40);
  const times = readingTimes(random(), logger, 0, 300_000);

  it("carry the error, the noise and the resolution", () => {
    // Noise 0.1 and rounding 0.1 / sqrt(12): 0.1041 together; 10,001 readings, standard error of the mean 0.00104.
    const read = readings(random(), logger, steady, steady.food, times);
    const mean = read.reduce((sum, value) => sum + value, 0) / read.length;
    const variance = read.reduce((sum, value) => sum + (value - mean) ** 2, 0) / read.length;
    expect(Math.abs(mean - 40.4)).toBeLessThan(0.0047);
    expect(Math.abs(Math.sqrt(variance) - 0.10408)).toBeLessThan(0.0034);
    for (const value of read) expect(value * 10).toBeCloseTo(Math.round(value * 10), 6);
  });

  it("hold as many faults as drawn", () => {
    const faulty = { ...logger, noise: 0, glitches: 2, faults: [85, -127, NaN] };
    const read = readings(random(), faulty, steady, steady.food, times);
    const off = read.filter((value) => !(Math.abs(value - 40.4) < 1));
    expect(off.length).toBe(5);
    expect(off.filter((value) => Number.isNaN(value)).length).toBe(1);
  });
});

describe("readingTimes", () => {
  it("loses about the drawn share of rows, never the first", () => {
    const lossy = { ...logger, lostShare: 0.1 };
    const times = readingTimes(random(), lossy, 50, 300_050);
    expect(times[0]).toBe(50);
    // 10,001 rows: standard error of the share 0.003; 4.5 of it.
    expect(Math.abs(times.length / 10_001 - 0.9)).toBeLessThan(0.0135);
  });

  it("takes six to twelve looks by hand, on whole minutes, up to the end", () => {
    for (let seed = 0; seed < 100; seed += 1) {
      const byHand = { ...logger, intervalSeconds: null };
      const times = readingTimes(createRandom(seed, "hand"), byHand, -120, 36_000);
      expect(times.length).toBeGreaterThanOrEqual(6);
      expect(times.length).toBeLessThanOrEqual(12);
      expect(times.at(-1)).toBe(36_000);
      times.forEach((time, at) => {
        expect(time % 60 === 0).toBe(true);
        if (at > 0) expect(time).toBeGreaterThan(times[at - 1]!);
      });
    }
  });
});

describe("probeCourse", () => {
  it("lags a ramp by rate times time constant", () => {
    // Settled lag of a first-order sensor: 0.01 degC/s x 60 s = 0.6 degC; steps of 10 s take off up to half a step, 0.05.
    const ramp = traceOf((seconds) => 20 + 0.01 * seconds);
    const shown = probeCourse(ramp, ramp.food, 60, []);
    const lag = ramp.food[3000]! - shown[3000]!;
    expect(lag).toBeGreaterThan(0.55);
    expect(lag).toBeLessThanOrEqual(0.6);
  });

  it("shows the room while it hangs out", () => {
    const steady = traceOf(() => 40);
    const shown = probeCourse(steady, steady.food, 30, [[5000, 9000]]);
    expect(shown[499]).toBeCloseTo(40, 9);
    expect(shown[899]).toBeLessThan(20.01);
    expect(shown[1000]).toBeGreaterThan(39.3);
  });
});
