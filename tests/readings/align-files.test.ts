import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { notice } from "../../src/notice.ts";
import { alignFiles } from "../../src/readings/align-files.ts";
import type { ReadingsFile } from "../../src/readings/readings-file.ts";
import { fileOf } from "../probe-files.ts";

const minuteMs = 60_000;
const evening = Date.UTC(2026, 1, 14, 22, 0);

/** A constructed file of 12 h. */
const file = (name: string, startWallClock: number | null, more: Partial<ReadingsFile> = {}) => ({
  ...fileOf(),
  name,
  timeFormat: "date-time" as const,
  startWallClock,
  ...more,
});
const aligned = (files: readonly ReadingsFile[], startsAt: readonly (number | null)[] = []) => {
  const outcome = alignFiles(
    files,
    files.map((_, at) => startsAt[at] ?? null),
  );
  if (!outcome.ok) throw new Error(outcome.problem.code);
  return outcome.value;
};
const firstMinutes = (files: readonly ReadingsFile[]) =>
  files.map(({ probes }) => probes[0]!.minutes[0]);

describe("alignFiles", () => {
  it("counts all minutes from the earliest first reading, on one clock", () => {
    const found = aligned([file("jar.csv", evening + 25 * minuteMs), file("bath.csv", evening)]);
    expect(firstMinutes(found)).toEqual([25, 0]);
    expect(found.map(({ startWallClock }) => startWallClock)).toEqual([evening, evening]);
    expect(found[0]!.probes[0]!.minutes.at(-1)).toBe(25 + 12 * 60);
  });

  it("shifts the minutes by as much as a file's clock is shifted, whichever file and however far", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 1 }),
        fc.integer({ min: -600, max: 600 }),
        fc.integer({ min: -60, max: 60 }),
        (which, by, apart) => {
          const clocks = [evening, evening + apart * minuteMs];
          const moved = clocks.map((clock, at) => clock + (at === which ? by * minuteMs : 0));
          const between = (starts: readonly number[]) => {
            const [a, b] = firstMinutes(aligned(starts.map((start) => file("a.csv", start))));
            return which === 0 ? a! - b! : b! - a!;
          };
          expect(between(moved) - between(clocks)).toBe(by);
          const all = firstMinutes(aligned(moved.map((start) => file("a.csv", start))));
          expect(Math.min(...all.map(Number))).toBe(0);
        },
      ),
    );
  });

  it("moves all readings of a file alike and changes no temperature", () => {
    const [jar, bath] = [file("jar.csv", evening + 5 * minuteMs), file("bath.csv", evening)];
    const [moved] = aligned([jar, bath]);
    expect(moved!.probes[0]!.celsius).toBe(jar.probes[0]!.celsius);
    expect(moved!.probes[0]!.minutes).toEqual(jar.probes[0]!.minutes.map((one) => one + 5));
  });

  it("lets probes of one file go on sharing their minutes", () => {
    const [probe] = fileOf().probes;
    const both = file("jar.csv", evening + minuteMs, {
      probes: [probe!, { ...probe!, name: "Lid" }],
    });
    const [{ probes }] = aligned([both, file("bath.csv", evening)]) as [ReadingsFile];
    expect(probes[1]!.minutes).toBe(probes[0]!.minutes);
  });

  it("puts a file that has only a clock on the day of the other", () => {
    const clock = file("bath.csv", Date.UTC(1970, 0, 1, 21, 30), { timeFormat: "clock" });
    expect(firstMinutes(aligned([file("jar.csv", evening), clock]))).toEqual([30, 0]);
  });

  it("puts dates without a year into the year of the other", () => {
    const yearless = file("bath.csv", Date.UTC(1970, 1, 14, 21, 30), {
      notices: [notice("year-unknown", { found: "02/14 21:30" })],
    });
    expect(firstMinutes(aligned([yearless, file("jar.csv", evening)]))).toEqual([0, 30]);
  });

  it("heeds what the person says of the first reading more than the file's clock", () => {
    const files = [file("jar.csv", evening), file("bath.csv", Date.UTC(2000, 0, 1))];
    expect(firstMinutes(aligned(files, [null, evening + 10 * minuteMs]))).toEqual([0, 10]);
  });

  it("asks for a start where a file has no clock", () => {
    expect(alignFiles([file("jar.csv", evening), file("bath.csv", null)], [null, null])).toEqual({
      ok: false,
      problem: { code: "clock-needed", facts: { file: "bath.csv" } },
    });
  });

  it("refuses loggers with a time between them, with both spans", () => {
    const files = [
      file("late.csv", evening + 24 * 60 * minuteMs),
      file("jar.csv", evening),
      file("bath.csv", evening),
    ];
    expect(alignFiles(files, [null, null, null])).toMatchObject({
      problem: {
        code: "loggers-apart",
        facts: {
          firstSpan: "2026-02-14 22:00 to 2026-02-15 10:00",
          second: "late.csv",
          secondSpan: "2026-02-15 22:00 to 2026-02-16 10:00",
        },
      },
    });
  });

  it("takes loggers in relay for one test as long as each meets another", () => {
    const relay = [0, 11, 22].map((hour) => file("a.csv", evening + hour * 60 * minuteMs));
    expect(firstMinutes(aligned(relay))).toEqual([0, 660, 1320]);
  });
});
