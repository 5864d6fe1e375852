import { describe, expect, it } from "vitest";
import { analyseKitchen } from "../../src/kitchen-analysis.ts";
import { adviceInput } from "../../src/kitchen-analysis/advice-input.ts";
import type { Kitchen, TestProbe } from "../../src/kitchen/kitchen.ts";
import {
  jar,
  kitchenOf,
  nightText,
  opener,
  options,
  testFile,
  waterTest,
} from "./small-kitchen.ts";

const startsAt = Date.UTC(2026, 2, 14, 20);
const bathProbe: TestProbe = { name: "Bath", place: "bath", thermometer: null };
const roomProbe: TestProbe = { name: "Room", place: "room", thermometer: null };
const texts = {
  jar: nightText({ level: 38, startsAt }),
  later: nightText({ level: 38.4, startsAt: startsAt + 86_400_000 }),
  bath: nightText({ level: 39, startsAt, column: "Bath" }),
  room: nightText({ level: 26, startsAt, column: "Room" }),
  short: nightText({ level: 38, startsAt, hoursHeld: 1.5 }),
};

/** Of constructed nights; the thermometer reads 0.3 degC too high. */
const inputOf = async (tests: Parameters<typeof kitchenOf>[0], more: Partial<Kitchen> = {}) => {
  const found = await analyseKitchen(kitchenOf(tests, more), options, opener(texts));
  if (!found.ok) throw new Error(found.problem.code);
  return adviceInput(found.value, options.today);
};

describe("adviceInput", () => {
  it("takes each test's level, place, room and thermometer as they were read", async () => {
    const { tests, setUps } = await inputOf([
      waterTest("one", [testFile("jar", [jar])]),
      waterTest("two", [testFile("later", [jar])]),
    ]);
    expect(tests.map(({ id }) => id)).toEqual(["one", "two"]);
    expect(tests[0]!.settled).toMatchObject({
      place: "food",
      level: expect.closeTo(37.7, 2),
      // Of 18 to 23: the middle, and a quarter of the range.
      room: { mean: 20.5, standardDeviation: 1.25 },
      response: null,
      tooLittle: false,
    });
    expect(tests[0]!.settled!.evidence.thermometerId).toBe("pen");
    expect(setUps).toHaveLength(1);
    expect(setUps[0]).toMatchObject({ testIds: ["one", "two"], mean: expect.closeTo(37.9, 2) });
    expect(setUps[0]!.scatter.repeats).toBe(1);
  });

  it("knows a test by its bath where nothing stood in the food's place", async () => {
    const { tests } = await inputOf([waterTest("one", [testFile("bath", [bathProbe])])]);
    expect(tests[0]!.settled!.place).toBe("bath");
  });

  it("takes the room from a probe in it, and how the food followed its bath", async () => {
    const { tests } = await inputOf([
      waterTest("one", [
        testFile("jar", [jar]),
        testFile("bath", [bathProbe]),
        testFile("room", [roomProbe]),
      ]),
    ]);
    const { settled } = tests[0]!;
    expect(settled!.place).toBe("food");
    expect(settled!.room.mean).toBeCloseTo(26, 1);
    expect(settled!.room.standardDeviation).toBeLessThan(0.5);
    expect(settled!.response!.offset.value).toBeCloseTo(39 - 37.7, 1);
  });

  it("assumes a usual room where nobody said", async () => {
    const { tests } = await inputOf([waterTest("one", [testFile("jar", [jar])])], { room: null });
    expect(tests[0]!.settled!.room.standardDeviation).toBeGreaterThan(2);
  });

  it("keeps tests that could not be read without a level, and marks short ones", async () => {
    const { tests } = await inputOf([
      waterTest("gone", [testFile("nowhere", [jar])]),
      waterTest("short", [testFile("short", [jar])]),
    ]);
    const of = (id: string) => tests.find((one) => one.id === id)!.settled;
    expect(of("gone")).toBeNull();
    expect(of("short")).toMatchObject({ tooLittle: true });
  });
});
