import { describe, expect, it } from "vitest";
import { parseKitchen } from "../../src/kitchen/parse-kitchen.ts";
import { kitchenText } from "../kitchen/written-kitchen.ts";
import { createRandom } from "./random.ts";
import { sampleRespondingCase } from "./responding-case.ts";
import { roomAt, sampleRoomWave } from "./responding-room.ts";

const seeds = Array.from({ length: 60 }, (_, index) => 4001 + index);
const cases = seeds.map(sampleRespondingCase);

const textsOf = async (seed: number): Promise<readonly string[]> => {
  const { kitchen, open } = sampleRespondingCase(seed);
  return Promise.all(
    kitchen.tests.map(async (test) => {
      const opened = await open(test.files[0]!, test);
      if (!opened.ok) return opened.problem.code;
      const parts: string[] = [];
      for await (const chunk of opened.value.chunks) parts.push(new TextDecoder().decode(chunk));
      return parts.join("");
    }),
  );
};

describe("sampleRespondingCase", () => {
  it("is the same for the same seed, to the byte", async () => {
    for (const seed of seeds.slice(0, 5)) {
      // oxlint-disable-next-line no-await-in-loop -- a few, one after the other
      expect(await textsOf(seed)).toEqual(await textsOf(seed));
      expect(sampleRespondingCase(seed).kitchen).toEqual(sampleRespondingCase(seed).kitchen);
    }
  });

  it("makes kitchens that a kitchen file can say", () => {
    for (const { kitchen } of cases) {
      const read = parseKitchen(kitchenText(kitchen), "kitchen.yaml");
      expect(read.ok && read.value).toMatchObject({
        appliances: kitchen.appliances,
        containers: kitchen.containers,
        tests: kitchen.tests,
        cultures: kitchen.cultures,
        thermometers: kitchen.thermometers,
      });
    }
  });

  it("has every control, tested and untested, with and without thermostat", () => {
    const kinds = new Set(cases.map(({ kitchen }) => kitchen.appliances[0]!.control.kind));
    expect([...kinds].toSorted()).toEqual(["fixed", "marks", "programs", "steps"]);
    const counts = new Set(cases.map(({ kitchen }) => kitchen.tests.length));
    expect([...counts].toSorted((a, b) => a - b)).toEqual([0, 1, 2, 3, 4, 5]);
    expect(new Set(cases.map(({ appliance }) => appliance.thermostatted)).size).toBe(2);
  });

  it("raises a dial's level with every mark", () => {
    for (const { appliance } of cases) {
      const { control, settings, level } = appliance.response;
      if (control.kind !== "marks") continue;
      const levels = settings.map(level);
      expect(levels.toSorted((a, b) => a - b)).toEqual(levels);
    }
  });

  it("puts no jars into the air of a bath and no basin into a box", () => {
    for (const { appliance, containers } of cases) {
      const stands = containers.map(({ container }) => container.stands);
      if (appliance.kind.endsWith("bath")) expect(stands).not.toContain("jars in air");
      if (appliance.kind === "warming box") expect(stands).not.toContain("basin");
    }
  });

  it("keeps the room within what it says of it", () => {
    for (const { habit, kitchen, seed } of cases) {
      const random = createRandom(seed, "room of a check");
      const wave = sampleRoomWave(random, habit, 20);
      const course = Array.from({ length: 1440 }, (_, minute) => roomAt(wave, minute));
      expect(Math.min(...course)).toBeGreaterThanOrEqual(habit.low - 1e-9);
      expect(Math.max(...course)).toBeLessThanOrEqual(habit.high + 1e-9);
      if (kitchen.room === null) continue;
      expect(kitchen.room.low).toBeLessThanOrEqual(habit.low);
      expect(kitchen.room.high).toBeGreaterThanOrEqual(habit.high);
    }
  });

  it("draws run-to-run scatter with a median of 0.15 degC between 0.05 and 0.4", () => {
    const drawn = cases.map(({ appliance }) => appliance.runDeviation).toSorted((a, b) => a - b);
    expect(drawn[0]).toBeGreaterThanOrEqual(0.05);
    expect(drawn.at(-1)).toBeLessThanOrEqual(0.4);
    // Standard error of the median's logarithm: 1.25 * 0.5 / sqrt(60) = 0.08; three of them.
    expect(Math.abs(Math.log(drawn[30]! / 0.15))).toBeLessThan(0.25);
  });
});

describe("its truth", () => {
  it("is worst for what lies far outside and best where the level is the window's middle", () => {
    const fine = cases.filter(
      ({ appliance }) => appliance.kind === "circulating bath" && appliance.runDeviation < 0.3,
    );
    expect(fine.length).toBeGreaterThan(3);
    for (const { truth, cultures } of fine) {
      const culture = cultures[0]!;
      const middle = (culture.low + culture.high) / 2;
      const from = (at: number) => Math.abs(truth.expectedHoldMean(truth.setUps[at]!, 8) - middle);
      const order = [...truth.setUps.keys()].toSorted((a, b) => from(a) - from(b));
      expect(truth.outlook(truth.setUps[order[0]!]!, culture).share).toBeGreaterThan(0.9);
      expect(truth.outlook(truth.setUps[order.at(-1)!]!, culture).share).toBe(0);
    }
  });
});
