import { describe, expect, it } from "vitest";
import { rawShelf } from "../../../src/page/work/raw-shelf.ts";
import type { RawFile } from "../../../src/page/work/keeper.ts";

const file = (path: string): RawFile => ({ path, content: new Blob([path]) });

const keeping = () => {
  const state = { kept: new Map<string, RawFile>(), full: false };
  const saveRaw = async (sha256: string, raw: RawFile) => {
    if (state.full) return { ok: false, why: "it is full" } as const;
    state.kept.set(sha256, raw);
    return { ok: true, value: null } as const;
  };
  const removeRaw = async (sha256: string) => {
    state.kept.delete(sha256);
    return { ok: true, value: null } as const;
  };
  return { state, saveRaw, removeRaw };
};

describe("logger files in memory", () => {
  it("are kept as they come", async () => {
    const keeper = keeping();
    const shelf = rawShelf(keeper);
    await shelf.put(new Map([["a", file("readings/a.csv")]]));
    expect([...shelf.all().keys()]).toEqual(["a"]);
    expect([...keeper.state.kept.keys()]).toEqual(["a"]);
    expect(shelf.why()).toBeNull();
  });

  it("stay here where there is no room for them, and are kept later", async () => {
    const keeper = keeping();
    keeper.state.full = true;
    const shelf = rawShelf(keeper);
    await shelf.put(new Map([["a", file("readings/a.csv")]]));
    expect(shelf.why()).toBe("it is full");
    expect(shelf.all().has("a")).toBe(true);
    keeper.state.full = false;
    await shelf.keep("unkept");
    expect(shelf.why()).toBeNull();
    expect(keeper.state.kept.has("a")).toBe(true);
  });

  it("are all kept again where somebody emptied the store", async () => {
    const keeper = keeping();
    const shelf = rawShelf(keeper);
    shelf.load(new Map([["a", file("readings/a.csv")]]));
    await shelf.keep("unkept");
    expect(keeper.state.kept.size).toBe(0);
    await shelf.keep("all");
    expect([...keeper.state.kept.keys()]).toEqual(["a"]);
  });

  it("are dropped in both places", async () => {
    const keeper = keeping();
    const shelf = rawShelf(keeper);
    await shelf.put(new Map([["a", file("readings/a.csv")]]));
    await shelf.drop("a");
    expect(shelf.all().size).toBe(0);
    expect(keeper.state.kept.size).toBe(0);
  });

  it("are replaced by others", async () => {
    const shelf = rawShelf(keeping());
    await shelf.put(new Map([["a", file("readings/a.csv")]]));
    shelf.reset(new Map([["b", file("readings/b.csv")]]), true);
    expect([...shelf.all().keys()]).toEqual(["b"]);
  });
});
