import { expect, it } from "vitest";
import { editStore } from "../../../src/page/work/edit-store.ts";
import { memoryStore } from "../../../src/page/work/memory-store.ts";
import { done } from "../../../src/problem.ts";
import { emptyShelf, equipped, shelfKeeper } from "./page-room.ts";

const storeWith = async (text: string) => {
  const store = memoryStore(shelfKeeper({ ...emptyShelf(), text }));
  await store.start();
  return store;
};

it("gives the kitchen before and after", async () => {
  const store = await storeWith(equipped);
  const edited = await editStore(store, ({ text }) => done(text.replace("unit: C", "unit: F")));
  expect(edited.ok && [edited.value.before.shownUnit, edited.value.after.shownUnit]).toEqual([
    "degC",
    "degF",
  ]);
  expect(store.text()).toContain("unit: F");
});

it("keeps nothing that would be no kitchen", async () => {
  const store = await storeWith(equipped);
  const edited = await editStore(store, ({ text }) => done(`${text}nonsense`));
  expect(edited).toMatchObject({ ok: false, problem: { code: "kitchen-invalid" } });
  expect(store.text()).toBe(equipped);
});
