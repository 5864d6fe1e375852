/** The built program on a real pseudo-terminal, driven by Python where there is one. */
import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { stripVTControlCharacters } from "node:util";
import { describe, expect, it } from "vitest";
import { listing, program, root } from "../run-holdband.ts";
import { cookerNight, emptyKitchen, equippedKitchen } from "./run-kitchen.ts";

const driver = join(root, "tests", "cli", "enter", "terminal_driver.py");
const hasTerminal =
  spawnSync("python3", ["-c", "import pty, os; os.waitstatus_to_exitcode"]).status === 0;
if (!hasTerminal)
  process.stderr.write("SKIPPED: no python3 with pty (3.9 or newer): the terminal is not tested\n");

type Step = { readonly wait: string } | { readonly type: string };

const down = "\u001B[B";
const ctrlC = "\u0003";
const ctrlD = "\u0004";

const atTerminal = (cwd: string, words: readonly string[], steps: readonly Step[]): string => {
  const command = [process.execPath, program, ...words];
  const run = spawnSync("python3", [driver, "40", JSON.stringify(steps), ...command], {
    cwd,
    encoding: "utf8",
    env: { PATH: process.env["PATH"] ?? "", LANG: "C.UTF-8", TERM: "xterm", TZ: "UTC" },
  });
  if (run.stderr !== "") throw new Error(`${run.stderr}\n${run.stdout}`);
  return stripVTControlCharacters(run.stdout).replaceAll("\r", "");
};

describe.skipIf(!hasTerminal)("at a terminal", () => {
  it("add asks for appliance, setting, container and thermometer", () => {
    const { folder, kitchen } = equippedKitchen("thermometers:\n  pen:\n    accuracy: 0.5\n");
    const screen = atTerminal(
      folder,
      ["add", cookerNight],
      [
        { wait: "Which appliance?" },
        { type: "\r" },
        { wait: "What was step-cooker set to?" },
        { type: "99\r" },
        { wait: "a step of 1 from 30" },
        { type: "\u007F\u007F38\r" },
        { wait: "Which container?" },
        { type: `${down}\r` },
        { wait: "Which thermometer measured?" },
        { type: "\r" },
      ],
    );
    expect(screen).toContain("Stored as step-cooker-38-basin-2026-02-19");
    expect(kitchen().tests[0]).toMatchObject({
      appliance: "step-cooker",
      setting: { kind: "step", celsius: 38 },
      container: "basin",
    });
    expect(kitchen().tests[0]?.files[0]?.probes[0]?.thermometer).toBe("pen");
  });

  it("batch asks for what nobody said, and for what decides whether a test is due", () => {
    const { folder, kitchen } = equippedKitchen("cultures: [reuteri, yoghurt]\n");
    const screen = atTerminal(
      folder,
      ["batch", "--starter", "5%", "--date", "2026-03-01"],
      [
        { wait: "Which culture?" },
        { type: `${down}\r` },
        { wait: "Which appliance?" },
        { type: `${down}${down}${down}\r` },
        { wait: "What was box set to?" },
        { type: `${down}\r` },
        { wait: "Which container?" },
        { type: "\r" },
        { wait: "Which generation?" },
        { type: "0\r" },
        { wait: "Expected a whole number" },
        { type: "\u007F2\r" },
        { wait: "Did whey part from it?" },
        { type: `${down}\r` },
      ],
    );
    expect(screen).toContain("Logged as batch 1, of 2026-03-01");
    const [batch] = kitchen().batches;
    expect(batch).toMatchObject({ culture: "yoghurt", appliance: "box", container: "jars" });
    expect(batch).toMatchObject({ generation: 2, separated: "a little", starter: 0.05 });
    const again = atTerminal(
      folder,
      ["batch", "--culture", "yoghurt", "--date", "2026-03-02"],
      [
        { wait: "Which generation?" },
        { type: "\r" },
        { wait: "Did whey part from it?" },
        { type: `${down}${down}${down}\r` },
      ],
    );
    expect(again).toContain("as in the batch of 2026-03-01");
    expect(kitchen().batches[1]).toMatchObject({ generation: null, separated: null });
  });

  it.each([
    ["Ctrl-C", ctrlC],
    ["Ctrl-D", ctrlD],
  ])("batch logs nothing where the person stops by %s, and says so", (_, key) => {
    const { folder } = equippedKitchen("cultures: [reuteri]\n");
    const before = listing(folder);
    const screen = atTerminal(
      folder,
      ["batch", "--separated", "none", "--appliance", "warm-cooker", "--container", "jars"],
      [{ wait: "Which generation?" }, { type: key }],
    );
    expect(screen).toContain("nothing was stored");
    expect(screen).toContain("ended with 2");
    expect(listing(folder)).toEqual(before);
  });

  it.each([
    ["Ctrl-C", ctrlC],
    ["Ctrl-D", ctrlD],
  ])("add stores nothing where the person stops by %s, and says so", (_, key) => {
    const { folder } = equippedKitchen();
    const before = listing(folder);
    const screen = atTerminal(
      folder,
      ["add", cookerNight, "--appliance", "box"],
      [{ wait: "What was box set to?" }, { type: key }],
    );
    expect(screen).toContain("nothing was stored");
    expect(screen).toContain("ended with 2");
    expect(listing(folder)).toEqual(before);
  });

  it("thermometer asks whether a doubtful check stands", () => {
    const { folder, kitchen } = emptyKitchen();
    const line = ["thermometer", "pen", "--ice", "6"];
    const no = atTerminal(folder, line, [{ wait: "does it stand" }, { type: "\r" }]);
    expect(no).toContain("ended with 2");
    expect(kitchen().thermometers).toEqual([]);
    const yes = atTerminal(folder, line, [{ wait: "does it stand" }, { type: "y" }]);
    expect(yes).toContain("ended with 0");
    expect(kitchen().thermometers[0]?.checks[0]).toMatchObject({ confirmed: true });
  });
});
