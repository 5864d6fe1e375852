import { describe, expect, it } from "vitest";
import { chooseDraft, damagedDrafts } from "../../../src/cli/enter/choose-draft.ts";
import type { FoundDraft } from "../../../src/cli/enter/draft-files.ts";
import type { Choice } from "../../../src/cli/kitchen/ask.ts";
import { saidOfFile } from "../../../src/input/water-test/said-of-test.ts";
import { logOf } from "../../readings/typed/typed-helpers.ts";

const test = saidOfFile("night.csv", [{ name: "Jar", place: "food", thermometer: null }]);
const found = (path: string, lines: readonly string[] | null): FoundDraft => ({
  file: { path, text: "" },
  draft: lines === null ? null : { test, log: logOf(lines) },
});
const two = [found("a", ["21:30 20"]), found("b", ["22:30 41", "7:00 41"]), found("/x/c", null)];

const never = () => Promise.reject(new Error("asked"));

describe("chooseDraft", () => {
  it("asks nothing where there is nothing to go on with", async () => {
    expect(await chooseDraft([found("c", null)], never)).toEqual({ ok: true, value: null });
  });

  it("offers each with what it holds, and a new one", async () => {
    let offered: readonly Choice[] = [];
    const second = async (_: string, choices: readonly Choice[]) => {
      offered = choices;
      return choices[1]?.value ?? null;
    };
    const chosen = await chooseDraft(two, second);
    expect(chosen).toMatchObject({ value: { file: { path: "b" } } });
    expect(offered).toHaveLength(3);
    expect(offered[1]?.label).toContain("2 readings");
    expect(await chooseDraft(two, async (_, choices) => choices.at(-1)?.value ?? null)).toEqual({
      ok: true,
      value: null,
    });
  });

  it("stops where the person does", async () => {
    expect(await chooseDraft(two, async () => null)).toMatchObject({
      problem: { code: "stopped" },
    });
  });
});

describe("damagedDrafts", () => {
  it("names what cannot be read", () => {
    expect(damagedDrafts(two)).toEqual(["c"]);
  });
});
