import { readdirSync, writeFileSync } from "node:fs";
import { basename } from "node:path";
import { describe, expect, it } from "vitest";
import { findDrafts } from "../../../src/cli/enter/draft-files.ts";
import { draftKeeper, newTyping } from "../../../src/cli/enter/draft-keeper.ts";
import { saidOfFile } from "../../../src/input/water-test/said-of-test.ts";
import { jarLog, logOf } from "../../readings/typed/typed-helpers.ts";
import { temporaryFolder } from "../run-holdband.ts";

const test = saidOfFile("night.csv", [{ name: "Jar", place: "food", thermometer: null }]);

describe("draftKeeper", () => {
  it("writes nothing before the first reading, and takes the draft away at the end", async () => {
    const folder = temporaryFolder();
    const keeper = draftKeeper(await newTyping(folder, test, jarLog()), () => undefined);
    expect(keeper.path()).toBeNull();
    expect(readdirSync(folder)).toEqual([]);
    expect((await keeper.save(logOf(["22:30 41.2"]))).ok).toBe(true);
    expect(basename(keeper.path() ?? "")).toBe(".draft-night.csv.json");
    await keeper.forget();
    expect(readdirSync(folder)).toEqual([]);
  });

  it("goes on in a draft of its own where another session took the first", async () => {
    const folder = temporaryFolder();
    const said: string[] = [];
    const keeper = draftKeeper(await newTyping(folder, test, jarLog()), (text) => said.push(text));
    await keeper.save(logOf(["22:30 41.2"]));
    writeFileSync(keeper.path() ?? "", "another session's");
    const log = logOf(["22:30 41.2", "23:00 41"]);
    expect((await keeper.save(log)).ok).toBe(true);
    expect(said).toHaveLength(1);
    const drafts = (await findDrafts(folder)).map(({ draft }) => draft?.log ?? null);
    expect(drafts).toContainEqual(log);
    expect(drafts).toContain(null);
  });
});
