import { expect, it } from "vitest";
import { startText } from "../../../../src/kitchen/start-text.ts";
import { quietNight } from "../nights.ts";
import { chosen, emptyShelf, equippedRoom, shelfKeeper } from "../page-room.ts";

const readings = { kind: "files", files: [chosen("night.csv", quietNight)] } as const;
const options = { appliance: ["warm-cooker"], container: ["jars"] };

it("forgets the kitchen, its readings and the last night, here and in the browser", async () => {
  const shelf = emptyShelf();
  const page = await equippedRoom("", shelfKeeper(shelf));
  await page.ok("add", { readings, options });
  const { state, remarks } = await page.ok("erase", null);
  expect([state.text, state.started, remarks]).toEqual([startText(), false, []]);
  expect([shelf.text, shelf.raw.size, page.room.store.raw().size]).toEqual([null, 0, 0]);
  expect((await page.problem("save", { what: "night-report" })).code).toBe("option-missing");
});

it("says where the browser still keeps something", async () => {
  const shelf = emptyShelf();
  const page = await equippedRoom("", shelfKeeper(shelf));
  shelf.full = "the browser's store failed";
  const { state, remarks } = await page.ok("erase", null);
  expect(state.started).toBe(false);
  expect(remarks[0]).toMatch(/not from the browser's store: the browser's store failed/);
});
