/** One planned water test carried out: what the kitchen says of it and its logger's text. */
import type { TemperatureRange, TestProbe, WaterTest } from "../../src/kitchen/kitchen.ts";
import type { Random } from "./random.ts";
import type { RespondingAppliance } from "./responding-appliance.ts";
import { simulateNight, type Night } from "./responding-course.ts";
import type { PlannedTest } from "./responding-plan.ts";
import { sampleRoomWave, type RoomHabit } from "./responding-room.ts";
import { shownAs, type RespondingThermometer } from "./responding-thermometer.ts";

export interface RespondingTest {
  readonly test: WaterTest;
  /** null where the file is gone. */
  readonly text: string | null;
}

export interface Bench {
  readonly appliance: RespondingAppliance;
  readonly habit: RoomHabit;
  /** For the food, and for a bath beside it. */
  readonly thermometers: readonly [RespondingThermometer, RespondingThermometer];
}

/** The culture's jars are filled warm or cold; most tests run overnight. */
export function runTest(
  random: Random,
  bench: Bench,
  planned: PlannedTest,
  index: number,
): RespondingTest {
  const { appliance, habit } = bench;
  const startHour = random.chance(0.8) ? random.uniform(17, 23.5) : random.uniform(7, 12);
  const hours = planned.mishap === "too short" ? random.uniform(0.7, 2) : random.uniform(5, 16);
  const room = sampleRoomWave(random, habit, startHour);
  const level =
    appliance.response.level(planned.setting) + random.normal(0, appliance.runDeviation);
  const filled = random.chance(0.5) ? room.level : Math.min(level, random.uniform(30, 42));
  const night = simulateNight(appliance, planned.container, {
    room,
    phase: random.next(),
    level,
    minutes: Math.round(hours * 60),
    start: { bath: Math.min(filled, level), food: random.chance(0.7) ? filled : room.level },
  });
  const startsAt = Date.UTC(2026, 2, 1 + 3 * index) + Math.round(startHour * 60) * 60_000;
  const logged = logText(random, { bench, planned, night, startsAt });
  const path = `readings/test-${index + 1}.csv`;
  return {
    test: described(planned, {
      id: `test-${index + 1}`,
      path,
      probes: logged.probes,
      room: random.chance(0.5) ? rangeOf(night.room) : null,
    }),
    text:
      planned.mishap === "missing"
        ? null
        : planned.mishap === "unreadable"
          ? "PK\u0003\u0004 nothing to read"
          : logged.text,
  };
}

const rangeOf = (room: Float64Array): TemperatureRange => ({
  low: Math.floor(room.reduce((a, b) => Math.min(a, b))),
  high: Math.ceil(room.reduce((a, b) => Math.max(a, b))),
});

interface Log {
  readonly bench: Bench;
  readonly planned: PlannedTest;
  readonly night: Night;
  readonly startsAt: number;
}

function logText(random: Random, { bench, planned, night, startsAt }: Log) {
  const interval = random.integer(1, 5);
  const [foodThermometer, bathThermometer] = bench.thermometers;
  const columns = (["food", "bath"] as const)
    .filter((place) => planned.probes.includes(place))
    .map((place) => ({
      place,
      course: night[place],
      by: place === "bath" && planned.probes !== "bath" ? bathThermometer : foodThermometer,
    }));
  const rows: string[] = [];
  for (let minute = 0; minute < night.food.length; minute += interval) {
    const cells = columns.map(({ course, by }) => readingText(random, by, course[minute]!));
    rows.push([clockText(startsAt, minute), ...cells].join(","));
  }
  const heading = ["Time", ...columns.map(({ place }) => `${columnNames[place]} (degC)`)].join(",");
  const probes = columns.map(({ place, by }): TestProbe => {
    return { name: columnNames[place], place, thermometer: by.thermometer.id };
  });
  return { text: [heading, ...rows].join("\n"), probes };
}

const columnNames = { food: "Jar", bath: "Water" } as const;

const noise = 0.02;

const readingText = (random: Random, by: RespondingThermometer, celsius: number): string =>
  shownAs(
    celsius + by.error(celsius) + random.normal(0, noise),
    by.thermometer.resolution ?? 0.1,
  ).toFixed(by.thermometer.resolution === 0.1 ? 1 : 4);

const clockText = (startsAt: number, minute: number): string =>
  new Date(startsAt + minute * 60_000).toISOString().slice(0, 16).replace("T", " ");

interface Said {
  readonly id: string;
  readonly path: string;
  readonly probes: readonly TestProbe[];
  readonly room: TemperatureRange | null;
}

const described = ({ setting, container }: PlannedTest, said: Said): WaterTest => ({
  id: said.id,
  appliance: "tried",
  setting,
  container: container.container.id,
  fill: null,
  room: said.room,
  notes: null,
  files: [
    {
      path: said.path,
      sha256: "0".repeat(64),
      startsAt: null,
      unit: null,
      dateOrder: null,
      decimal: null,
      intervalSeconds: null,
      columns: [],
      probes: said.probes,
    },
  ],
});
