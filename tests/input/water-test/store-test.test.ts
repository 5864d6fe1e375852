import { describe, expect, it } from "vitest";
import type { NewTest, TypedText } from "../../../src/input/water-test/new-test.ts";
import { storeTest } from "../../../src/input/water-test/store-test.ts";
import type { WorkPhase } from "../../../src/input/water-test/work-watch.ts";
import { failed } from "../../../src/problem.ts";
import { kitchenOf, problemOf, sampleText, today, valueOf } from "../sample-kitchen.ts";
import { memory } from "./memory-store.ts";

// Constructed nights.
const night = (level: number): string =>
  `Time,Jar (°C)\n2026-10-03T22:00,20.5\n2026-10-03T23:30,37.9\n2026-10-04T02:00,38.1\n2026-10-04T06:00,${level}\n`;

const test = (...texts: readonly string[]): NewTest<TypedText> => ({
  name: null,
  appliance: "step-cooker",
  setting: "38",
  container: "jars",
  fill: null,
  room: null,
  notes: null,
  files: texts.map((text, at) => ({
    name: `night-${at + 1}.csv`,
    source: { text },
    readingOptions: {},
    starts: null,
    probes: null,
  })),
});

const judgedBy = { version: "0.0.0", today };

const stopped = () => failed("stopped", { what: "writing" });

describe("storeTest", () => {
  it("reads and judges first, copies next, lists last", async () => {
    const { store, text, raw, calls } = memory(sampleText);
    const stored = valueOf(await storeTest(store, test(night(38)), judgedBy));
    expect(stored).toMatchObject({
      id: "step-cooker-38-jars-2026-10-03",
      files: ["readings/night-1.csv"],
    });
    expect(stored.reading.analysis?.probes[0]?.series.celsius).toHaveLength(4);
    expect(calls).toEqual(["open", "open", "keep", "update"]);
    expect(kitchenOf(text()).tests[0]?.files[0]?.path).toBe("readings/night-1.csv");
    expect([...raw.values()]).toEqual([night(38)]);
  });

  it("tells how far it is", async () => {
    const { store } = memory(sampleText);
    const seen: (readonly [WorkPhase, string, number?])[] = [];
    await storeTest(store, test(night(38)), judgedBy, (phase) => ({
      onOpened: (bytes) => seen.push([phase, "opened", bytes]),
      onBytes: (count) => seen.push([phase, "read", count]),
      onEnd: () => seen.push([phase, "end"]),
    }));
    const { length } = new TextEncoder().encode(night(38));
    expect(seen).toEqual([
      ["reading", "opened", length],
      ["reading", "read", length],
      ["reading", "end"],
      ["judging", "read", length],
      ["judging", "end"],
    ]);
  });

  it("stores nothing of what it knows already, under whatever name", async () => {
    const { store, text, calls } = memory(sampleText);
    await storeTest(store, test(night(38)), judgedBy);
    const before = text();
    const again = await storeTest(store, { ...test(night(38)), name: "other" }, judgedBy);
    expect(problemOf(again).code).toBe("file-known");
    expect(text()).toBe(before);
    expect(calls.filter((one) => one === "keep")).toHaveLength(1);
    const twins = await storeTest(store, test(night(37), night(37)), judgedBy);
    expect(problemOf(twins)).toMatchObject({ code: "options-contradict" });
  });

  it.each([
    ["what cannot be read", test("a,b\nx,y\nz,w\n")],
    ["a name that is taken", { ...test(night(37)), name: "first" }],
    ["a setting it has not", { ...test(night(37)), setting: "38.5" }],
    ["an appliance that is not there", { ...test(night(37)), appliance: "stove" }],
  ])("copies nothing for %s", async (_, wrong) => {
    const { store, text, calls } = memory(sampleText);
    valueOf(await storeTest(store, { ...test(night(38)), name: "first" }, judgedBy));
    const [before, done] = [text(), calls.length];
    problemOf(await storeTest(store, wrong, judgedBy));
    expect(text()).toBe(before);
    expect(calls.slice(done)).not.toContain("keep");
  });

  it("takes its copies back where the test cannot be listed", async () => {
    const { store, text, raw, calls } = memory(sampleText, { update: stopped });
    const outcome = await storeTest(store, test(night(38), night(37)), judgedBy);
    expect(problemOf(outcome).code).toBe("stopped");
    expect(text()).toBe(sampleText);
    expect(raw.size).toBe(0);
    expect(calls.slice(-3)).toEqual(["update", "take back", "take back"]);
  });

  it("does not list a file that changed after it was judged", async () => {
    const { store, text, raw } = memory(sampleText, { copied: (one) => `${one}\n` });
    const outcome = await storeTest(store, test(night(38)), judgedBy);
    expect(problemOf(outcome)).toEqual({
      code: "file-changed-meanwhile",
      facts: { file: "night-1.csv" },
    });
    expect(text()).toBe(sampleText);
    expect(raw.size).toBe(0);
  });
});
