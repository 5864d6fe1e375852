import { describe, expect, it } from "vitest";
import { problemText } from "../../../src/problem.ts";
import { sessionStep } from "../../../src/readings/typed/typed-session.ts";
import type { TypedSession } from "../../../src/readings/typed/typed-session.ts";
import { jarLog, morning, shown } from "./typed-helpers.ts";

const start: TypedSession = { log: jarLog(), past: [] };

/** All lines typed one after the other, every doubt answered with yes. */
const typed = (lines: readonly string[], from = start): TypedSession =>
  lines.reduce((session, line) => {
    const step = sessionStep(session, line, morning);
    if (step.kind === "refused") throw new Error(problemText(step.problem));
    return step.kind === "changed" ? step.session : session;
  }, from);

const refusal = (session: TypedSession, line: string): string => {
  const step = sessionStep(session, line, morning);
  return step.kind === "refused" ? problemText(step.problem) : `not refused: ${step.kind}`;
};

const night = typed(["21:30 20.1", "22:30 38.4", "+1h 41.2", "now 41.0"]);

describe("sessionStep", () => {
  it("takes readings", () => {
    expect(shown(night.log)).toEqual([
      "2026-10-03 21:30 20.1",
      "2026-10-03 22:30 38.4",
      "2026-10-03 23:30 41.2",
      "2026-10-04 08:00 41.0",
    ]);
  });

  it.each([
    ["fix 3 23:45 41.0", "2026-10-03 23:45 41.0"],
    ["fix 3 41.0", "2026-10-03 23:30 41.0"],
    ["fix 3 23:45", "2026-10-03 23:45 41.2"],
    ["Fix #3 11:45 pm", "2026-10-03 23:45 41.2"],
    ["change no. 3 41,0", "2026-10-03 23:30 41.0"],
  ])("%s", (line, expected) => {
    expect(shown(typed([line], night).log)[2]).toBe(expected);
  });

  it("undoes step by step, drops, and undoes the drop", () => {
    expect(typed(["undo"], night).log.readings).toHaveLength(3);
    expect(typed(["undo", "undo", "undo", "undo"], night).log).toEqual(start.log);
    expect(typed(["fix 3 41.0", "undo"], night).log).toEqual(night.log);
    expect(shown(typed(["drop 1"], night).log)[0]).toBe("2026-10-03 22:30 38.4");
    expect(typed(["drop 1", "undo"], night).log).toEqual(night.log);
  });

  it.each([
    ["?", "help"],
    ["HELP", "help"],
    ["list", "list"],
    ["done", "done"],
    ["later", "later"],
    ["quit", "later"],
    ["  ", "nothing"],
  ])("%j asks for %s", (line, kind) => {
    expect(sessionStep(night, line, morning)).toEqual({ kind });
  });

  it.each([
    ["undo", start, "something to undo"],
    ["fix", night, "fix 3 22:45 41.0"],
    ["fix 3", night, "fix 3 22:45 41.0"],
    ["drop", night, "drop 3"],
    ["drop 9", night, "from 1 to 4"],
    ["fix 3 warm", night, "Expected"],
    ["fix 3 25:00 41", night, "a time from 0:00 to 23:59"],
    ["hello", night, "22:30 41.2"],
  ] as const)("%s is refused with what to do", (line, session, words) => {
    expect(refusal(session, line)).toContain(words);
  });

  it("asks about odd values unless the line says that they are right", () => {
    expect(sessionStep(night, "now 412", morning + 600)).toMatchObject({
      kind: "changed",
      doubts: [{ kind: "value" }],
    });
    expect(sessionStep(night, "now 90 !", morning + 600)).toMatchObject({
      kind: "changed",
      doubts: [],
    });
  });
});
