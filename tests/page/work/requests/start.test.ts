import { describe, expect, it } from "vitest";
import { cultures } from "../../../../src/culture/catalogue.ts";
import { startText } from "../../../../src/kitchen/start-text.ts";
import { chosen, emptyShelf, equipped, pageRoom, shelfKeeper } from "../page-room.ts";

describe("a visit", () => {
  it("begins with a fresh kitchen where nothing was kept", async () => {
    const state = await pageRoom().ok("start", null);
    expect(state).toMatchObject({
      text: startText(),
      missing: [],
      today: "2026-10-20",
      version: "0.1.0",
      notKept: null,
      started: false,
    });
    expect(state.catalogue).toEqual(cultures);
  });

  it("goes on with what was kept", async () => {
    const shelf = { ...emptyShelf(), text: equipped };
    const state = await pageRoom(shelfKeeper(shelf)).ok("start", null);
    expect(state.started).toBe(true);
    expect(state.kitchen.appliances.map(({ id }) => id)).toEqual(["step-cooker", "warm-cooker"]);
  });

  it("goes on without keeping where the browser keeps nothing, and says so", async () => {
    const keeper = {
      ...shelfKeeper(emptyShelf()),
      load: async () => ({ ok: false, why: "the browser keeps nothing" }) as const,
    };
    const state = await pageRoom(keeper).ok("start", null);
    expect(state.notKept).toBe(
      "What is new here is not kept when you close this page: the browser keeps nothing. Save your kitchen as a file before you go.",
    );
  });

  it("never loses a kept kitchen that this version cannot read: it can be saved, erased or replaced", async () => {
    const kept = "holdband: 99\nstrange: yes\n";
    const shelf = { ...emptyShelf(), text: kept };
    const page = pageRoom(shelfKeeper(shelf));
    expect((await page.problem("start", null)).code).toBe("kitchen-invalid");
    const edit = { section: "culture", words: ["yoghurt"], options: {} } as const;
    expect((await page.problem("edit", edit)).code).toBe("kitchen-invalid");
    expect(shelf.text).toBe(kept);
    const saved = await page.ok("save", { what: "kitchen-yaml" });
    expect(await saved.content.text()).toBe(kept);
    await page.ok("open", { files: [chosen("kitchen.yaml", equipped)] });
    expect(shelf.text).toBe(equipped);
  });
});
