import { describe, expect, it } from "vitest";
import { runSession } from "../../../src/cli/enter/session.ts";
import { done, failed } from "../../../src/problem.ts";
import type { TypedLog } from "../../../src/readings/typed/typed-types.ts";
import { jarLog, morning, shown as readings } from "../../readings/typed/typed-helpers.ts";
import { scripted } from "./enter-helpers.ts";

const session = async (lines: readonly string[], from = jarLog()) => {
  const { prompter, shown } = scripted(lines);
  const saves: TypedLog[] = [];
  const save = async (log: TypedLog) => {
    saves.push(log);
    return done(undefined);
  };
  const plan = { prompter, looks: { ascii: false }, width: 200, now: () => morning, save };
  const end = await runSession(from, plan);
  return { ...end, saves, shown: shown() };
};

const onFullDisk = async () => failed("file-unwritable", { file: "x", why: "the disk is full" });

const keeps = async () => done(undefined);

describe("runSession", () => {
  it("takes readings, saves each at once, and ends with done", async () => {
    const end = await session(["21:30 20.1", "22:30 38.4", "done"]);
    expect(end.how).toBe("done");
    expect(end.saves.map((log) => log.readings.length)).toEqual([1, 2]);
    expect(end.shown).toContain("  2 > 22:30 38.4\n  2.  2026-10-03 22:30   38.4 °C\n");
  });

  it("ends without loss where the terminal is gone", async () => {
    const end = await session(["21:30 20.1"]);
    expect(end).toMatchObject({ how: "later", log: { readings: { length: 1 } } });
    expect((await session(["21:30 20.1", "later"])).how).toBe("later");
  });

  it("asks about odd values and takes y, n, or the right line in place of an answer", async () => {
    const yes = await session(["21:30 20.1", "22:30 88", "y", "done"]);
    expect(readings(yes.log)[1]).toBe("2026-10-03 22:30 88");
    expect(yes.shown).toContain("88 is 68 degC from the reading before (20.1)");
    const no = await session(["21:30 20.1", "22:30 412", "n", "later"]);
    expect(no.log.readings).toHaveLength(1);
    expect(no.shown).toContain("Did you mean 41.2?");
    const instead = await session(["21:30 20.1", "22:30 412", "22:30 41.2", "done"]);
    expect(readings(instead.log)[1]).toBe("2026-10-03 22:30 41.2");
    const gone = await session(["21:30 20.1", "22:30 412"]);
    expect(gone.log.readings).toHaveLength(1);
  });

  it("breaks long sentences where the screen ends", async () => {
    const { prompter, shown } = scripted(["21:30 20.1 20"]);
    const plan = { prompter, looks: { ascii: false }, width: 60, now: () => morning, save: keeps };
    await runSession(jarLog(), plan);
    const lines = shown().split("\n");
    expect(lines.filter((line) => line.length > 60)).toEqual([]);
    expect(lines.length).toBeGreaterThan(3);
  });

  it("saves after every kind of change, also after undo", async () => {
    const end = await session(["21:30 20", "22:30 38", "fix 2 39", "drop 1", "undo", "later"]);
    expect(end.saves).toHaveLength(5);
    expect(end.saves.at(-1)).toEqual(end.log);
    expect(readings(end.log)).toEqual(["2026-10-03 21:30 20", "2026-10-03 22:30 39"]);
  });

  it("refuses done before there are two readings, and shows help and the list", async () => {
    const end = await session(["21:30 20.1", "done", "?", "list", "", "nonsense", "later"]);
    expect(end.how).toBe("later");
    expect(end.shown).toContain("At least two readings are needed");
    expect(end.shown).toContain("fix 3 22:45 41");
    expect(end.shown).toContain('Expected a time and a temperature, found "nonsense"');
    expect(end.saves).toHaveLength(1);
  });

  it("goes on, and says so, where a reading could not be saved", async () => {
    const { prompter, shown } = scripted(["21:30 20.1", "22:30 38", "done"]);
    const plan = {
      prompter,
      looks: { ascii: false },
      width: 200,
      now: () => morning,
      save: onFullDisk,
    };
    const end = await runSession(jarLog(), plan);
    expect(end.log.readings).toHaveLength(2);
    expect(shown()).toContain("Not saved: ");
    expect(shown()).toContain("the disk is full");
  });
});
