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
