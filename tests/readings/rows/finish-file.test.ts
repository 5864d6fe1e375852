import { describe, expect, it } from "vitest";
import { outcomeOf, problemOf, read } from "../reading-helpers.ts";

const heading = "time,T1 (°C)\n";

describe("finishFile", () => {
  it("says what is left, and where the rest went", async () => {
    expect(await problemOf(`${heading}22:00,ERR\n22:30,ERR\n`)).toMatchObject({
      code: "no-readings-left",
      facts: { rowsRead: 2, setAside: "2 text-flag (first at line 2)" },
    });
    expect(await problemOf(`${heading}22:00,21.5\n`)).toMatchObject({
      code: "too-few-readings",
      facts: { found: 1 },
    });
  });
  it("names gaps by their longest", async () => {
    const rows = Array.from(
      { length: 30 },
      (_, at) => `22:${String(at).padStart(2, "0")}:00,41.${at % 3}`,
    );
    const file = await read(`${heading}${rows.join("\n")}\n23:29:00,41\n`);
    expect(file.notices).toContainEqual({
      code: "gap",
      facts: { firstLine: 32, minutes: 60, count: 1 },
    });
  });
  it("counts minutes and the wall clock from the first used row", async () => {
    const outcome = await outcomeOf(
      "time,T1 (°C)\n2026-01-05 22:00,ERR\n2026-01-05 22:30,41.2\n2026-01-05 23:00,41\n",
    );
    if (!outcome.ok) throw new Error(outcome.problem.code);
    expect(outcome.value.startWallClock).toBe(Date.UTC(2026, 0, 5, 22, 30));
    expect([...outcome.value.probes[0]!.minutes]).toEqual([0, 30]);
    expect(outcome.value.probes[0]!.resolution).toBeCloseTo(0.2, 9);
  });
});
