import { createHash } from "node:crypto";
import { describe, expect, it } from "vitest";
import type { KitchenEdit } from "../../../src/input/kitchen/edit-kitchen-text.ts";
import type { NewTestFile } from "../../../src/input/water-test/new-test.ts";
import type { TestFile } from "../../../src/kitchen/kitchen.ts";
import { startText } from "../../../src/kitchen/start-text.ts";
import { done, failed } from "../../../src/problem.ts";
import { memoryStore } from "../../../src/page/work/memory-store.ts";
import type { PageSource } from "../../../src/page/work/memory-store.ts";
import { emptyShelf, shelfKeeper } from "./page-room.ts";

const sha = (text: string): string => createHash("sha256").update(text).digest("hex");

const newFile = (name: string, source: PageSource): NewTestFile<PageSource> => ({
  name,
  source,
  readingOptions: {},
  starts: null,
  probes: null,
});

const listed = (path: string, sha256: string): TestFile => ({
  path,
  sha256,
  startsAt: null,
  unit: null,
  dateOrder: null,
  decimal: null,
  intervalSeconds: null,
  columns: [],
  probes: [],
});

const comment =
  (mark: string) =>
  (text: string): ReturnType<KitchenEdit> =>
    done(`${text}# ${mark}\n`);

const silent = (): void => undefined;

const textOf = async (chunks: AsyncIterable<Uint8Array>): Promise<string> => {
  const parts: Uint8Array[] = [];
  for await (const part of chunks) parts.push(part);
  return Buffer.concat(parts).toString("utf8");
};

const windowOn = async (shelf = emptyShelf()) => {
  const store = memoryStore(shelfKeeper(shelf));
  await store.start();
  return store;
};

describe("a kitchen in memory", () => {
  it("begins as a fresh one, of which nothing is kept", async () => {
    const shelf = emptyShelf();
    const store = await windowOn(shelf);
    expect(store.text()).toBe(startText());
    expect(store.started()).toBe(false);
    expect(store.notKept()).toBeNull();
    expect(shelf.text).toBeNull();
  });

  it("keeps text and files, which the next visit finds", async () => {
    const shelf = emptyShelf();
    const first = await windowOn(shelf);
    const kept = await first.keepRaw(newFile("night.csv", { content: new Blob(["1,2"]) }));
    expect(kept).toEqual(done({ path: "readings/night.csv", sha256: sha("1,2"), isNew: true }));
    await first.update(comment("a"));
    const next = await windowOn(shelf);
    expect(next.started()).toBe(true);
    expect(next.text()).toBe(`${startText()}# a\n`);
    const opened = await next.openListed(listed("readings/night.csv", sha("1,2")), silent);
    expect(opened.ok && (await textOf(opened.value.chunks))).toBe("1,2");
  });

  it("loses no edit of two windows at once", async () => {
    const shelf = emptyShelf();
    const [one, other] = [await windowOn(shelf), await windowOn(shelf)];
    await one.update(comment("one"));
    await other.update(comment("other"));
    await one.update(comment("one again"));
    expect(shelf.text).toBe(`${startText()}# one\n# other\n# one again\n`);
    expect(one.text()).toBe(shelf.text);
  });

  it("finds the files that another window took in", async () => {
    const shelf = emptyShelf();
    const [one, other] = [await windowOn(shelf), await windowOn(shelf)];
    await one.keepRaw(newFile("night.csv", { text: "1,2" }));
    await one.update(comment("one"));
    await other.update(comment("other"));
    expect((await other.openListed(listed("readings/night.csv", sha("1,2")), silent)).ok).toBe(
      true,
    );
  });

  it("goes on where the browser's store is full, says so, and keeps all of it once there is room", async () => {
    const shelf = emptyShelf();
    const store = await windowOn(shelf);
    shelf.full = "the browser has no more room for it";
    const kept = await store.keepRaw(newFile("night.csv", { text: "1,2" }));
    expect(kept.ok).toBe(true);
    expect((await store.update(comment("a"))).ok).toBe(true);
    expect(store.notKept()).toBe(shelf.full);
    expect(store.text()).toMatch(/# a\n$/);
    expect((await store.openListed(listed("readings/night.csv", sha("1,2")), silent)).ok).toBe(
      true,
    );
    shelf.full = null;
    await store.update(comment("b"));
    expect(store.notKept()).toBeNull();
    expect(shelf.raw.has(sha("1,2"))).toBe(true);
    expect(shelf.text).toMatch(/# a\n# b\n$/);
  });

  it("keeps the text where only a long file has no room", async () => {
    const shelf = emptyShelf();
    shelf.room = 2;
    const store = await windowOn(shelf);
    await store.keepRaw(newFile("night.csv", { text: "1,2" }));
    await store.update(comment("a"));
    expect(shelf.text).toMatch(/# a\n$/);
    expect(store.notKept()).toMatch(/no more room/);
  });

  it("does without a store that cannot be read", async () => {
    const keeper = shelfKeeper(emptyShelf());
    const store = memoryStore({
      ...keeper,
      load: async () => ({ ok: false, why: "the browser keeps nothing" }),
      saveText: async () => ({ ok: false, why: "the browser keeps nothing" }),
    });
    await store.start();
    expect(store.notKept()).toBe("the browser keeps nothing");
    expect((await store.update(comment("a"))).ok).toBe(true);
    expect(store.text()).toMatch(/# a\n$/);
  });

  it("changes nothing where an edit fails", async () => {
    const shelf = emptyShelf();
    const store = await windowOn(shelf);
    await store.update(comment("a"));
    const before = store.text();
    const refused = await store.update(() => failed("kitchen-missing", { folder: "." }));
    expect(refused.ok).toBe(false);
    expect(store.text()).toBe(before);
    expect(shelf.text).toBe(before);
  });
});

describe("logger files of a kitchen in memory", () => {
  it("are known by their bytes: the same ones are not stored twice", async () => {
    const store = await windowOn();
    await store.keepRaw(newFile("night.csv", { text: "1,2" }));
    const again = await store.keepRaw(newFile("copy of night.csv", { text: "1,2" }));
    expect(again).toEqual(done({ path: "readings/night.csv", sha256: sha("1,2"), isNew: false }));
    const other = await store.keepRaw(newFile("night.csv", { text: "3,4" }));
    expect(other).toEqual(done({ path: "readings/night-2.csv", sha256: sha("3,4"), isNew: true }));
  });

  it("take no path that the kitchen lists for a file that is missing", async () => {
    const store = await windowOn();
    const digits = "0".repeat(64);
    const text = `holdband: 1
appliances:
  box: { kind: warming box, control: fixed }
containers:
  jars: { stands: jars in water }
tests:
  one:
    appliance: box
    container: jars
    files:
      - { file: readings/night.csv, sha256: ${digits}, probes: { Jar: { place: food } } }
`;
    await store.replace({ text, raw: new Map() });
    const kept = await store.keepRaw(newFile("night.csv", { text: "1,2" }));
    expect(kept.ok && kept.value.path).toBe("readings/night-2.csv");
  });

  it("are taken back, unless they were here before", async () => {
    const shelf = emptyShelf();
    const store = await windowOn(shelf);
    const first = await store.keepRaw(newFile("night.csv", { text: "1,2" }));
    const again = await store.keepRaw(newFile("night.csv", { text: "1,2" }));
    if (!first.ok || !again.ok) throw new Error("not kept");
    await store.takeBack(again.value);
    expect(store.raw().size).toBe(1);
    await store.takeBack(first.value);
    expect(store.raw().size).toBe(0);
    expect(shelf.raw.size).toBe(0);
  });

  it("are missing where they are not here, and refused where the browser gives back others", async () => {
    const shelf = emptyShelf();
    const store = await windowOn(shelf);
    const missing = await store.openListed(listed("readings/a.csv", sha("1,2")), silent);
    expect(missing).toMatchObject({ ok: false, problem: { code: "raw-file-missing" } });
    await store.update(comment("a"));
    shelf.raw.set(sha("1,2"), { path: "readings/a.csv", content: new Blob(["1,3"]) });
    const next = await windowOn(shelf);
    const changed = await next.openListed(listed("readings/a.csv", sha("1,2")), silent);
    expect(changed).toEqual(
      failed("raw-file-changed", {
        file: "readings/a.csv",
        expected: sha("1,2").slice(0, 12),
        found: sha("1,3").slice(0, 12),
      }),
    );
  });

  it("are copies: what happens to the chosen file later does not matter", async () => {
    const store = await windowOn();
    const content = new Blob(["1,2"]);
    await store.keepRaw(newFile("night.csv", { content }));
    expect(store.raw().get(sha("1,2"))?.content).not.toBe(content);
  });

  it("can be read again from the start before they are stored", async () => {
    const store = await windowOn();
    const file = newFile("night.csv", { text: "1,2" });
    for (const turn of ["first", "second"]) {
      // oxlint-disable-next-line no-await-in-loop -- one after the other
      const opened = await store.openSource(file, silent);
      // oxlint-disable-next-line no-await-in-loop
      expect(opened.ok && (await textOf(opened.value.chunks)), turn).toBe("1,2");
    }
  });
});

describe("erasing and replacing", () => {
  it("forgets everything here and in the browser", async () => {
    const shelf = emptyShelf();
    const store = await windowOn(shelf);
    await store.keepRaw(newFile("night.csv", { text: "1,2" }));
    await store.update(comment("a"));
    expect(await store.erase()).toBeNull();
    expect(store.started()).toBe(false);
    expect(store.raw().size).toBe(0);
    expect([shelf.text, shelf.raw.size]).toEqual([null, 0]);
  });

  it("tells where the browser could not forget, and never brings the old kitchen back", async () => {
    const shelf = emptyShelf();
    const store = await windowOn(shelf);
    await store.update(comment("old"));
    shelf.full = "the browser's store failed";
    expect(await store.erase()).toBe(shelf.full);
    shelf.full = null;
    await store.update(comment("new"));
    expect(store.text()).toBe(`${startText()}# new\n`);
    expect(shelf.text).toBe(store.text());
  });

  it("outlives an emptied store: text and files are kept again at the next edit", async () => {
    const shelf = emptyShelf();
    const store = await windowOn(shelf);
    await store.keepRaw(newFile("night.csv", { text: "1,2" }));
    await store.update(comment("a"));
    shelf.text = null;
    shelf.raw.clear();
    await store.update(comment("b"));
    expect(shelf.text).toMatch(/# a\n# b\n$/);
    expect(shelf.raw.has(sha("1,2"))).toBe(true);
  });

  it("puts another kitchen in its place, in memory only where the store is full", async () => {
    const shelf = emptyShelf();
    const store = await windowOn(shelf);
    await store.keepRaw(newFile("night.csv", { text: "1,2" }));
    await store.update(comment("old"));
    await store.replace({ text: "holdband: 1\n", raw: new Map() });
    expect([shelf.text, shelf.raw.size]).toEqual(["holdband: 1\n", 0]);
    shelf.full = "the browser has no more room for it";
    await store.replace({ text: "holdband: 1\nunit: F\n", raw: new Map() });
    expect(store.text()).toBe("holdband: 1\nunit: F\n");
    expect(store.notKept()).toBe(shelf.full);
    expect(shelf.text).toBe("holdband: 1\n");
  });
});
