import { describe, expect, it } from "vitest";
import { keptKitchen } from "../../../src/page/work/analyse-kept.ts";
import { quietNight } from "./nights.ts";
import { chosen, equippedRoom, pageRoom } from "./page-room.ts";

const readings = { kind: "files", files: [chosen("night.csv", quietNight)] } as const;
const options = { appliance: ["warm-cooker"], container: ["jars"] };

describe("the kitchen's analysis", () => {
  it("counts the bytes it reads, of all there are", async () => {
    const page = await equippedRoom();
    await page.ok("add", { readings, options });
    page.told.length = 0;
    await keptKitchen(page.room);
    expect(page.told.at(-1)).toEqual([quietNight.length, quietNight.length]);
  });

  it("is made anew the next day, for checks grow old", async () => {
    const page = await equippedRoom();
    await keptKitchen(page.room);
    const first = page.room.desk.kitchen;
    await keptKitchen({ ...page.room, now: () => new Date(2026, 9, 21, 12) });
    expect(page.room.desk.kitchen).not.toBe(first);
  });

  it("is refused where every test's readings are missing", async () => {
    const page = await equippedRoom();
    const { state } = await page.ok("add", { readings, options });
    const other = pageRoom();
    await other.ok("open", { files: [chosen("kitchen.yaml", state.text)] });
    expect(await keptKitchen(other.room)).toMatchObject({
      ok: false,
      problem: { code: "no-test-readable", facts: { count: 1 } },
    });
  });
});
