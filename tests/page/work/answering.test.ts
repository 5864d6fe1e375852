import { describe, expect, it } from "vitest";
import { answering } from "../../../src/page/work/answering.ts";
import { memoryStore } from "../../../src/page/work/memory-store.ts";
import type { Asked, FromWorker } from "../../../src/page/protocol.ts";
import { quietNight } from "./nights.ts";
import { chosen, emptyShelf, noon, shelfKeeper } from "./page-room.ts";

/** A worker without a thread; each message ticks its clock by `step` milliseconds. */
const working = (step = 1000, post?: (message: FromWorker) => void) => {
  const posted: FromWorker[] = [];
  let time = 0;
  const take = answering({
    room: {
      store: memoryStore(shelfKeeper(emptyShelf())),
      desk: { night: null, kitchen: null },
      now: () => noon,
      version: "0.1.0",
    },
    post: (message) => {
      post?.(message);
      posted.push(message);
    },
    clock: () => {
      time += step;
      return time;
    },
  });
  return { take, posted };
};

const night = { kind: "files", files: [chosen("night.csv", quietNight)] } as const;
const options = { culture: ["reuteri"] };

describe("the worker's answers", () => {
  it("come one after the other, each under its own number", async () => {
    const { take, posted } = working();
    const box = { kind: ["warming box"], control: ["fixed"] };
    await Promise.all([
      take({ id: 1, name: "check", asked: { readings: night, options } }),
      take({ id: 2, name: "edit", asked: { section: "appliance", words: ["box"], options: box } }),
      take({ id: 3, name: "remove", asked: { section: "appliance", id: "box" } }),
      take({ id: 4, name: "remove", asked: { section: "appliance", id: "box" } }),
    ]);
    const answers = posted.filter((message) => message.kind === "answer");
    expect(answers.map(({ id, outcome }) => [id, outcome.ok])).toEqual([
      [1, true],
      [2, true],
      [3, true],
      [4, false],
    ]);
  });

  it("can be sent to another thread", async () => {
    const { take, posted } = working(1000, (message) => {
      structuredClone(message);
    });
    await take({ id: 1, name: "start", asked: null });
    await take({ id: 2, name: "check", asked: { readings: night, options } });
    await take({ id: 3, name: "save", asked: { what: "night-report" } });
    expect(posted.filter(({ kind }) => kind === "answer")).toHaveLength(3);
  });

  it("tell progress before the answer, and not too often", async () => {
    const often = working(1000);
    await often.take({ id: 7, name: "check", asked: { readings: night, options } });
    const progress = often.posted.filter(({ kind }) => kind === "progress");
    expect(progress.length).toBeGreaterThan(0);
    expect(progress[0]).toMatchObject({ id: 7, total: quietNight.length });
    const files = Array.from({ length: 30 }, (_, at) =>
      chosen(`${at}.csv`, quietNight.replace("Jar", `Jar ${at}`)),
    );
    // 30 files are read within 30 ticks of a millisecond or two each.
    const seldom = working(1);
    await seldom.take({
      id: 8,
      name: "open",
      asked: { files: [chosen("kitchen.yaml", "holdband: 1\n"), ...files] },
    });
    expect(seldom.posted.filter(({ kind }) => kind === "progress")).toHaveLength(1);
  });

  it("are a problem where something inside goes wrong, and the next is answered all the same", async () => {
    const { take, posted } = working();
    await take({ id: 1, name: "check", asked: null } as unknown as Asked);
    await take({ id: 2, name: "no such thing", asked: null } as unknown as Asked);
    await take({ id: 3, name: "toString", asked: null } as unknown as Asked);
    await take({ id: 4, name: "start", asked: null });
    const outcomes = posted.map((one) => (one.kind === "answer" ? one.outcome : null));
    expect(outcomes.slice(0, 3)).toEqual([
      expect.objectContaining({
        ok: false,
        problem: expect.objectContaining({ code: "internal" }),
      }),
      expect.objectContaining({
        ok: false,
        problem: expect.objectContaining({ code: "internal" }),
      }),
      expect.objectContaining({
        ok: false,
        problem: expect.objectContaining({ code: "internal" }),
      }),
    ]);
    expect(outcomes[3]?.ok).toBe(true);
  });

  it("are a problem where an answer cannot be sent", async () => {
    let first = true;
    const { take, posted } = working(1000, () => {
      const refuses = first;
      first = false;
      if (refuses) throw new DOMException("no clone of it", "DataCloneError");
    });
    await take({ id: 1, name: "start", asked: null });
    expect(posted).toMatchObject([
      { id: 1, kind: "answer", outcome: { ok: false, problem: { code: "internal" } } },
    ]);
  });

  it("know the kitchen of the last visit, whatever is asked first", async () => {
    const { take, posted } = working();
    await take({ id: 1, name: "save", asked: { what: "kitchen-yaml" } });
    expect(posted[0]).toMatchObject({ outcome: { ok: true } });
  });
});
