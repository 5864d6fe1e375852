/** The built program on a real pseudo-terminal, driven by Python where there is one. */
import { spawnSync } from "node:child_process";
import { readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { stripVTControlCharacters } from "node:util";
import { describe, expect, it } from "vitest";
import { program } from "../run-holdband.ts";
import { night, testKitchen } from "./enter-helpers.ts";

const driver = fileURLToPath(new URL("terminal_driver.py", import.meta.url));
const hasTerminal =
  spawnSync("python3", ["-c", "import pty, os; os.waitstatus_to_exitcode"]).status === 0;
if (!hasTerminal)
  process.stderr.write("SKIPPED: no python3 with pty (3.9 or newer): the terminal is not tested\n");

type Step = { readonly wait: string } | { readonly type: string } | { readonly kill: number };

const atTerminal = (cwd: string, line: readonly string[], steps: readonly Step[]) => {
  const command = [process.execPath, program, "enter", ...line];
  const run = spawnSync("python3", [driver, "30", JSON.stringify(steps), ...command], {
    cwd,
    encoding: "utf8",
    env: { PATH: process.env["PATH"] ?? "", LANG: "C.UTF-8", TERM: "xterm", TZ: "UTC" },
  });
  if (run.stderr !== "") throw new Error(`${run.stderr}\n${run.stdout}`);
  return stripVTControlCharacters(run.stdout).replaceAll("\r", "");
};

const typed = (lines: readonly string[], from = 1): readonly Step[] =>
  lines.flatMap((line, at) => [{ wait: `${from + at} > ` }, { type: `${line}\r` }]);

const setUp = ["--setting", "38", "--container", "jars", "--date", "2026-10-03"];
const killed = 9;

describe.skipIf(!hasTerminal)("enter at a terminal", () => {
  it("asks what is missing, loses nothing when killed, and goes on with the night", () => {
    const kitchen = testKitchen();
    const first = atTerminal(kitchen, setUp, [
      { wait: "Which appliance?" },
      { type: "\r" },
      { wait: "Which thermometer was read?" },
      { type: "\r" },
      ...typed(night.slice(0, 4)),
      { wait: "5 > " },
      { type: "4:10 3" },
      { kill: killed },
    ]);
    expect(first).toContain("  4.  2026-10-04 00:30   38.1 °C\n");
    expect(first).toContain("ended with -9");
    expect(readdirSync(join(kitchen, "readings"))).toEqual([".draft-step-cooker-38-jars.json"]);
    const second = atTerminal(
      kitchen,
      [],
      [
        { wait: "There are readings that were not finished." },
        { wait: "4 readings since 2026-10-03 21:30" },
        { type: "\r" },
        ...typed(night.slice(4), 5),
        { wait: "9 > " },
        { type: "done\r" },
      ],
    );
    expect(second).toContain("Stored as step-cooker-38-jars-2026-10-03");
    expect(second).toContain("ended with 0");
    const [name] = readdirSync(join(kitchen, "readings"));
    expect(name).toBe("step-cooker-38-jars-2026-10-03-by-hand.csv");
    const csv = readFileSync(join(kitchen, "readings", name ?? ""), "utf8");
    expect(csv.split("\n")).toHaveLength(night.length + 2);
  }, 90_000);

  it("keeps what was typed at Ctrl-C, and takes lines pasted together", () => {
    const kitchen = testKitchen();
    const line = ["--appliance", "step-cooker", ...setUp, "--thermometer", "pen"];
    const run = atTerminal(kitchen, line, [
      { wait: "1 > " },
      { type: `${night.slice(0, 3).join("\r")}\r` },
      { wait: "3.  2026-10-03 23:30" },
      { wait: "4 > " },
      { type: "\u0003" },
      { wait: "Kept for later: 3 readings" },
    ]);
    expect(run).toContain("ended with 0");
    expect(readdirSync(join(kitchen, "readings"))).toEqual([".draft-step-cooker-38-jars.json"]);
  }, 60_000);
});
