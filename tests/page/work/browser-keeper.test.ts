import { afterEach, describe, expect, it, vi } from "vitest";
import { browserKeeper } from "../../../src/page/work/browser-keeper.ts";
import { constructedDatabase } from "./constructed-database.ts";

const raw = (path: string, text: string) => ({ path, content: new Blob([text]) });

const keeperOn = (room?: number) => {
  const database = constructedDatabase(room);
  vi.stubGlobal("indexedDB", database);
  return { database, keeper: browserKeeper(), other: browserKeeper() };
};

afterEach(() => {
  vi.unstubAllGlobals();
});

const add = (mark: string) => (kept: string | null) => `${kept ?? ""}${mark}`;

describe("a kitchen in the browser's store", () => {
  it("is none before anything was kept", async () => {
    const { keeper, database } = keeperOn();
    expect(await keeper.load()).toEqual({ ok: true, value: null });
    expect([...database.databases.keys()]).toEqual(["holdband"]);
  });

  it("comes back with its text and files", async () => {
    const { keeper, other } = keeperOn();
    await keeper.saveText(() => "holdband: 1\n");
    await keeper.saveRaw("abc", raw("readings/night.csv", "1,2"));
    const loaded = await other.load();
    if (!loaded.ok || loaded.value === null) throw new Error("nothing was kept");
    expect(loaded.value.text).toBe("holdband: 1\n");
    const kept = loaded.value.raw.get("abc");
    expect([kept?.path, await kept?.content.text()]).toEqual(["readings/night.csv", "1,2"]);
  });

  it("is edited by two windows at once without losing an edit", async () => {
    const { keeper, other } = keeperOn();
    const marks = ["a", "b", "c", "d"];
    await Promise.all(marks.map((mark, at) => (at % 2 === 0 ? keeper : other).saveText(add(mark))));
    const loaded = await keeper.load();
    const text = loaded.ok ? (loaded.value?.text ?? "") : "";
    expect(text.split("").toSorted()).toEqual(marks);
  });

  it("tells the text as it was, and leaves it where there is nothing to change", async () => {
    const { keeper } = keeperOn();
    expect(await keeper.saveText(() => null)).toEqual({ ok: true, value: null });
    expect(await keeper.load()).toEqual({ ok: true, value: null });
    await keeper.saveText(() => "a");
    expect(await keeper.saveText(() => null)).toEqual({ ok: true, value: "a" });
  });

  it("is replaced whole", async () => {
    const { keeper } = keeperOn();
    await keeper.saveText(() => "old");
    await keeper.saveRaw("old", raw("readings/old.csv", "1"));
    const files = new Map([["new", raw("readings/new.csv", "2")]]);
    expect(await keeper.replace({ text: "new", raw: files })).toEqual({ ok: true, value: null });
    const loaded = await keeper.load();
    expect(loaded.ok && [loaded.value?.text, [...(loaded.value?.raw.keys() ?? [])]]).toEqual([
      "new",
      ["new"],
    ]);
  });

  it("stays as it was where another has no room", async () => {
    const { keeper } = keeperOn(20);
    await keeper.saveText(() => "old");
    const files = new Map([["new", raw("readings/new.csv", "x".repeat(100))]]);
    const replaced = await keeper.replace({ text: "new", raw: files });
    expect(replaced).toEqual({ ok: false, why: "the browser has no more room for it" });
    const loaded = await keeper.load();
    expect(loaded.ok && loaded.value?.text).toBe("old");
  });

  it("says where there is no room for a file or the text", async () => {
    const { keeper } = keeperOn(20);
    const why = "the browser has no more room for it";
    expect(await keeper.saveRaw("a", raw("readings/a.csv", "x".repeat(30)))).toEqual({
      ok: false,
      why,
    });
    expect(await keeper.saveText(() => "x".repeat(30))).toEqual({ ok: false, why });
  });

  it("forgets a file, and everything", async () => {
    const { keeper, database } = keeperOn();
    await keeper.saveText(() => "a");
    await keeper.saveRaw("a", raw("readings/a.csv", "1"));
    await keeper.removeRaw("a");
    const loaded = await keeper.load();
    expect(loaded.ok && loaded.value?.raw.size).toBe(0);
    await keeper.clear();
    expect(database.databases.get("holdband")?.size).toBe(0);
  });
});

describe("a browser that keeps nothing", () => {
  const kept = "the browser keeps nothing for pages opened this way";

  it("is told of where it has no store at all", async () => {
    const keeper = browserKeeper();
    const all = await Promise.all([
      keeper.load(),
      keeper.saveText(() => "a"),
      keeper.saveRaw("a", raw("readings/a.csv", "1")),
      keeper.clear(),
    ]);
    expect(all).toEqual(all.map(() => ({ ok: false, why: kept })));
  });

  it.each([
    ["SecurityError", kept],
    ["UnknownError", "the browser's store failed (UnknownError)"],
  ])("is told of where it refuses with %s", async (name, why) => {
    vi.stubGlobal("indexedDB", {
      open: () => {
        throw new DOMException("no", name);
      },
    });
    expect(await browserKeeper().load()).toEqual({ ok: false, why });
  });

  it("does not hold up the page where it never answers", async () => {
    vi.useFakeTimers();
    vi.stubGlobal("indexedDB", { open: () => ({}) });
    const loading = browserKeeper().load();
    await vi.advanceTimersByTimeAsync(10_000);
    vi.useRealTimers();
    expect(await loading).toEqual({ ok: false, why: "the browser's store does not answer" });
  });
});
