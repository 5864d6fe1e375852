import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { basename, join } from "node:path";
import { describe, expect, it } from "vitest";
import {
  findDrafts,
  newDraftFile,
  removeDraft,
  saveDraft,
} from "../../../src/cli/enter/draft-files.ts";
import { saidOfFile } from "../../../src/input/water-test/said-of-test.ts";
import { logOf } from "../../readings/typed/typed-helpers.ts";
import { temporaryFolder, write } from "../run-holdband.ts";

const test = saidOfFile("night.csv", [{ name: "Jar", place: "food", thermometer: null }]);
const draft = { test, log: logOf(["22:30 41.2"]) };
const more = { test, log: logOf(["22:30 41.2", "7:00 41"]) };

const saved = async (folder: string) => {
  const first = await saveDraft(await newDraftFile(folder, ["step cooker", "38"]), draft);
  if (!first.ok) throw new Error(first.problem.code);
  return first.value;
};

describe("drafts on disk", () => {
  it("are written, found, written again and removed", async () => {
    const folder = temporaryFolder();
    const file = await saved(folder);
    expect(basename(file.path)).toBe(".draft-step-cooker-38.json");
    expect(await findDrafts(folder)).toEqual([{ file, draft }]);
    const second = await saveDraft(file, more);
    expect(await findDrafts(folder)).toMatchObject([{ draft: more }]);
    if (second.ok) await removeDraft(second.value);
    expect(readdirSync(folder)).toEqual([]);
  });

  it("never share a name", async () => {
    const folder = temporaryFolder();
    await saved(folder);
    const other = await newDraftFile(folder, ["step cooker", "38"]);
    expect(basename(other.path)).toBe(".draft-step-cooker-38-2.json");
  });

  it("are left alone where another session wrote them since", async () => {
    const folder = temporaryFolder();
    const file = await saved(folder);
    writeFileSync(file.path, "another session's");
    expect(await saveDraft(file, more)).toMatchObject({
      ok: false,
      problem: { code: "file-changed-meanwhile" },
    });
    await removeDraft(file);
    expect(readFileSync(file.path, "utf8")).toBe("another session's");
    expect(await findDrafts(folder)).toMatchObject([{ draft: null }]);
  });

  it("are none where there is no folder, and no other file is one", async () => {
    const folder = temporaryFolder();
    write(folder, "night.csv", "Time,Jar\n");
    expect(await findDrafts(folder)).toEqual([]);
    expect(await findDrafts(join(folder, "nowhere"))).toEqual([]);
  });
});
