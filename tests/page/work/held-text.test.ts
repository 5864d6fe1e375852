import { describe, expect, it } from "vitest";
import { editHeld } from "../../../src/page/work/held-text.ts";
import type { HeldText } from "../../../src/page/work/held-text.ts";
import { done, failed } from "../../../src/problem.ts";

const fresh = "fresh";

/** A browser's store of one text. */
const storing = (kept: string | null, full = false) => {
  const state = { kept };
  const saveText = async (change: (before: string | null) => string | null) => {
    const before = state.kept;
    const next = change(before);
    if (next !== null && full) return { ok: false, why: "it is full" } as const;
    state.kept = next ?? before;
    return { ok: true, value: before } as const;
  };
  return { state, saveText };
};

const refuse = () => failed("kitchen-missing", { folder: "." });
const add = (mark: string) => (text: string) => done(`${text}+${mark}`);
const held = (text: string, kept: string | null, why: string | null = null): HeldText => ({
  text,
  kept,
  why,
});

describe("an edit of the text", () => {
  it("is kept", async () => {
    const store = storing(null);
    const edited = await editHeld(held(fresh, null), add("a"), store, fresh);
    expect(edited.held).toEqual(held("fresh+a", "fresh+a"));
    expect(store.state.kept).toBe("fresh+a");
  });

  it("begins with what another window has kept since", async () => {
    const store = storing("fresh+theirs");
    const edited = await editHeld(held(fresh, fresh), add("ours"), store, fresh);
    expect(edited.held.text).toBe("fresh+theirs+ours");
    expect(edited.found).toBe("fresh+theirs");
    expect(store.state.kept).toBe("fresh+theirs+ours");
  });

  it("stands in memory with the reason where the store is full, and is kept once it is not", async () => {
    const full = storing("old", true);
    const first = await editHeld(held("old", "old"), add("a"), full, fresh);
    expect(first.held).toEqual(held("old+a", "old", "it is full"));
    expect(full.state.kept).toBe("old");
    const second = await editHeld(first.held, add("b"), storing("old"), fresh);
    expect(second.held).toEqual(held("old+a+b", "old+a+b"));
  });

  it("writes over no other window's text where something here was never kept", async () => {
    const store = storing("theirs");
    const edited = await editHeld(held("old+a", "old", "it is full"), add("b"), store, fresh);
    expect(edited.held.text).toBe("old+a+b");
    expect(edited.held.kept).toBe("old");
    expect(edited.held.why).toMatch(/another window/);
    expect(store.state.kept).toBe("theirs");
  });

  it("is kept again where somebody emptied the store", async () => {
    const store = storing(null);
    const edited = await editHeld(held("mine", "mine"), add("a"), store, fresh);
    expect(edited.held).toEqual(held("mine+a", "mine+a"));
    expect(edited.found).toBeNull();
  });

  it("changes nothing where it fails", async () => {
    const store = storing("mine");
    const before = held("mine", "mine");
    const edited = await editHeld(before, refuse, store, fresh);
    expect(edited.outcome.ok).toBe(false);
    expect(edited.held).toBe(before);
    expect(store.state.kept).toBe("mine");
  });

  it("takes another window's text even where it fails on it: the person then sees why", async () => {
    const edited = await editHeld(held("mine", "mine"), refuse, storing("theirs"), fresh);
    expect(edited.held).toEqual(held("theirs", "theirs"));
  });

  it("goes on without any store at all", async () => {
    const none = { saveText: async () => ({ ok: false, why: "there is none" }) as const };
    const edited = await editHeld(held(fresh, null), add("a"), none, fresh);
    expect(edited.held).toEqual(held("fresh+a", null, "there is none"));
    expect(edited.outcome).toEqual(done("fresh+a"));
  });
});
