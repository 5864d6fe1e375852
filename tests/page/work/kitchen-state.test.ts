import { describe, expect, it } from "vitest";
import { missingIn } from "../../../src/page/work/kitchen-state.ts";
import { equippedRoom, pageRoom } from "./page-room.ts";

const more = `  - id: mine
    low: 86F
    high: 91F
    ceiling: 104F
    hours: 20h
batches:
  - { date: 2026-03-01, culture: mine, appliance: step-cooker, setting: 38, container: jars }
  - { date: 2026-03-05, culture: yoghurt, appliance: warm-cooker, container: jars }
`;

const file = (path: string, sha256: string) => ({ path, sha256 });

describe("the kitchen as it is written", () => {
  it("has every entry by its name, batches by their numbers, each in the words of the file", async () => {
    const page = await equippedRoom(more);
    const { written } = await page.ok("start", null);
    expect(written["appliances"]).toEqual({
      "step-cooker": { kind: "cooker", steps: "30..60 by 1" },
      "warm-cooker": { kind: "cooker", control: "fixed" },
    });
    expect(written["thermometers"]).toEqual({ pen: { accuracy: "1" } });
    expect(written["cultures"]).toEqual({
      yoghurt: {},
      mine: { id: "mine", low: "86F", high: "91F", ceiling: "104F", hours: "20h" },
    });
    expect(Object.keys(written["batches"] ?? {})).toEqual(["1", "2"]);
    expect(written["batches"]?.["1"]).toMatchObject({ setting: "38" });
    expect(written["tests"]).toEqual({});
  });

  it("has every section, empty in a fresh kitchen", async () => {
    const { written } = await pageRoom().ok("start", null);
    expect(written).toEqual({
      thermometers: {},
      appliances: {},
      containers: {},
      cultures: {},
      tests: {},
      batches: {},
    });
  });

  it("crosses to another thread as it is", async () => {
    const state = await (await equippedRoom(more)).ok("start", null);
    expect(structuredClone(state)).toEqual(state);
  });
});

it("lists readings that are not here, with their test", () => {
  const tests = [
    { id: "one", files: [file("readings/a.csv", "a"), file("readings/b.csv", "b")] },
    { id: "two", files: [file("readings/c.csv", "c")] },
  ] as unknown as Parameters<typeof missingIn>[0]["tests"];
  expect(missingIn({ tests }, (sha256) => sha256 === "b")).toEqual([
    { test: "one", path: "readings/a.csv" },
    { test: "two", path: "readings/c.csv" },
  ]);
});
