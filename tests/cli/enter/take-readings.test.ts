import { existsSync, readdirSync } from "node:fs";
import { basename, join } from "node:path";
import { describe, expect, it } from "vitest";
import { findDrafts } from "../../../src/cli/enter/draft-files.ts";
import { newTyping } from "../../../src/cli/enter/draft-keeper.ts";
import { enterShape } from "../../../src/cli/enter/enter-shape.ts";
import { fileTarget } from "../../../src/cli/enter/file-target.ts";
import { kitchenTarget } from "../../../src/cli/enter/kitchen-target.ts";
import { startLog } from "../../../src/input/water-test/start-log.ts";
import { typeReadings } from "../../../src/cli/enter/take-readings.ts";
import { openKitchen } from "../../../src/cli/kitchen/kitchen-folder.ts";
import { temporaryFolder, write } from "../run-holdband.ts";
import { night, scripted, shellWith, testKitchen } from "./enter-helpers.ts";

const shell = shellWith("");

const kitchenAt = async (folder: string) => {
  const opened = await openKitchen(folder);
  if (!opened.ok) throw new Error(opened.problem.code);
  const options = enterShape.parse({
    appliance: ["step-cooker"],
    setting: ["38"],
    container: ["jars"],
    thermometer: ["pen"],
  });
  const target = kitchenTarget(opened.value, options, shell);
  const said = await target.said();
  if (!said.ok) throw new Error(said.problem.code);
  const log = startLog(said.value, options, target.usualUnit);
  return { target, typing: await newTyping(target.draftFolder, said.value, log) };
};

const readingsOf = (folder: string) =>
  readdirSync(join(folder, "readings")).filter((name) => name !== "kitchen.yaml");

describe("typeReadings", () => {
  it("types a night into the kitchen and leaves no draft", async () => {
    const folder = testKitchen();
    const { target, typing } = await kitchenAt(folder);
    const { prompter, shown } = scripted([...night, "done"]);
    const result = await typeReadings(typing, target, prompter, shell);
    const stored = await result;
    expect(stored).toMatchObject({ ok: true, value: { exitCode: 0, err: "" } });
    expect(shown()).toContain("step-cooker, 38, jars: Jar (food)");
    expect(readingsOf(folder)).toEqual(["step-cooker-38-jars-2026-10-03-by-hand.csv"]);
  });

  it("keeps a draft when stopped, and goes on from it", async () => {
    const folder = testKitchen();
    const { target, typing } = await kitchenAt(folder);
    const first = scripted(night.slice(0, 3));
    const stopped = await typeReadings(typing, target, first.prompter, shell);
    expect(stopped.ok && stopped.value.out).toContain("Kept for later: 3 readings");
    const [found] = await findDrafts(target.draftFolder);
    expect(found?.draft?.log.readings).toHaveLength(3);
    if (found === undefined || found.draft === null) throw new Error("no draft");
    expect(target.isOwn(found.draft)).toBe(true);
    const again = { folder: target.draftFolder, file: found.file, draft: found.draft };
    const second = scripted([...night.slice(3), "done"]);
    expect((await typeReadings(again, target, second.prompter, shell)).ok).toBe(true);
    expect(second.shown()).toContain("  3.  2026-10-03 23:30   38.2 °C   (lid opened)");
    expect(readingsOf(folder)).toEqual(["step-cooker-38-jars-2026-10-03-by-hand.csv"]);
  });

  it("keeps the draft where the test cannot be stored", async () => {
    const folder = testKitchen();
    const { target, typing } = await kitchenAt(folder);
    const { prompter } = scripted([...night, "done"]);
    write(folder, "kitchen.yaml", "holdband: [");
    const result = await typeReadings(typing, target, prompter, shell);
    expect(result).toMatchObject({ ok: true, value: { exitCode: 2, out: "" } });
    expect(result.ok && result.value.err).toContain("Kept for later: 8 readings");
    expect(readingsOf(folder)).toEqual([".draft-step-cooker-38-jars.json"]);
  });

  it("takes a draft away that was stored before the power went", async () => {
    const folder = testKitchen();
    const first = await kitchenAt(folder);
    await typeReadings(first.typing, first.target, scripted([...night, "done"]).prompter, shell);
    const again = await kitchenAt(folder);
    const typed = scripted([...night, "done"]);
    const result = await typeReadings(again.typing, again.target, typed.prompter, shell);
    expect(result).toMatchObject({ ok: false, problem: { code: "file-known" } });
    expect(readingsOf(folder)).toEqual(["step-cooker-38-jars-2026-10-03-by-hand.csv"]);
  });

  it("does the same for a file without a kitchen", async () => {
    const out = join(temporaryFolder(), "night.csv");
    const target = fileTarget(out, enterShape.parse({}), shell);
    const said = await target.said();
    if (!said.ok) throw new Error(said.problem.code);
    const log = startLog(said.value, enterShape.parse({}), target.usualUnit);
    const typing = await newTyping(target.draftFolder, said.value, log);
    const first = scripted(night.slice(0, 2));
    await typeReadings(typing, target, first.prompter, shell);
    const [found] = await findDrafts(target.draftFolder);
    expect(basename(found?.file.path ?? "")).toBe(".draft-night.csv.json");
    if (found === undefined || found.draft === null) throw new Error("no draft");
    expect(target.isOwn(found.draft)).toBe(true);
    const second = scripted(["done"]);
    const again = { folder: target.draftFolder, file: found.file, draft: found.draft };
    await typeReadings(again, target, second.prompter, shell);
    expect(existsSync(out)).toBe(true);
    expect(await findDrafts(target.draftFolder)).toEqual([]);
  });
});
