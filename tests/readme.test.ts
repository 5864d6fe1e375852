/** What the README tells a newcomer to type works as written, from an empty folder. */
import { copyFileSync, existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { spawnSync } from "node:child_process";
import { describe, expect, it } from "vitest";
import { program, root, temporaryFolder } from "./cli/run-holdband.ts";

const readme = readFileSync(join(root, "README.md"), "utf8");
const example = (name: string): string => join(root, "fixtures", "kitchen", "readings", name);

/** Indented lines of one section: what one is to type. */
const typedIn = (heading: string): readonly string[] => {
  const from = readme.indexOf(`## ${heading}\n`);
  expect(from, heading).toBeGreaterThan(-1);
  const end = readme.indexOf("\n## ", from + 3);
  return readme
    .slice(from, end)
    .split("\n")
    .filter((line) => line.startsWith("    "))
    .map((line) => line.trim());
};

/** As a shell runs them, with a `npx` that finds the built program. */
const typeAll = (lines: readonly string[], cwd: string) => {
  const shim = join(cwd, ".shim");
  mkdirSync(shim);
  writeFileSync(join(shim, "npx"), `#!/bin/sh\nshift\nexec node "${program}" "$@"\n`, {
    mode: 0o755,
  });
  return spawnSync("sh", ["-e", "-c", lines.join("\n")], {
    cwd,
    encoding: "utf8",
    env: { ...process.env, PATH: `${shim}:${process.env["PATH"] ?? ""}`, LANG: "C.UTF-8" },
  });
};

// Dozens of commands, each a process of its own.
describe("the README", { timeout: 120_000 }, () => {
  it("leads from an empty folder to a kitchen's report", () => {
    const folder = temporaryFolder();
    copyFileSync(example("adjustable-cooker.csv"), join(folder, "night.csv"));
    const lines = typedIn("A kitchen of your own");
    expect(lines[0]).toBe("npx holdband init my-kitchen");
    const run = typeAll(lines, folder);
    expect(run.stderr).toBe("");
    expect(run.status).toBe(0);
    const html = readFileSync(join(folder, "my-kitchen", "reports", "kitchen.html"), "utf8");
    expect(html).toMatch(/^<!doctype html>/i);
    const kitchen = readFileSync(join(folder, "my-kitchen", "kitchen.yaml"), "utf8");
    // The logger's file, and the night typed by hand after it.
    expect(kitchen.match(/sha256:/g)?.length).toBeGreaterThanOrEqual(2);
  });

  it("leads from three batches, two of them separated, through a re-test to the answer", () => {
    const folder = temporaryFolder();
    copyFileSync(example("adjustable-cooker.csv"), join(folder, "night.csv"));
    copyFileSync(example("adjustable-cooker-again.csv"), join(folder, "again.csv"));
    const story = typedIn("Curds separate batch after batch?");
    const run = typeAll([...typedIn("A kitchen of your own"), "echo STORY", ...story], folder);
    expect(run.stderr).toBe("");
    expect(run.status).toBe(0);
    const told = run.stdout.slice(run.stdout.indexOf("STORY")).replaceAll(/\s+/g, " ");
    const retest = told.indexOf("Stored as");
    expect(told.slice(0, retest)).toMatch(
      /Due Test the cooker at 38.+whey separated in each of the last 2 batches/,
    );
    const answer = told.slice(retest);
    expect(answer).toMatch(/NOT MOVED since 2026-02-19/);
    expect(answer).toMatch(/2 of 3 batches separated; temperature is not it/);
    expect(answer).toMatch(/1\. Held too long.+2\. Thin milk/);
    expect(answer).not.toContain("Due Test the cooker");
  });

  it.each([
    "After an overnight test",
    "Without a terminal",
    "Which appliance for the lower culture?",
    "Log your batches",
    "Heating the milk",
  ])("gives commands that work: %s", (heading) => {
    const folder = temporaryFolder();
    copyFileSync(example("cooker-warm-program.csv"), join(folder, "night.csv"));
    copyFileSync(example("cooker-warm-program.csv"), join(folder, "cooker.csv"));
    copyFileSync(example("warming-box.txt"), join(folder, "box.csv"));
    copyFileSync(join(root, "fixtures", "milk-heating.csv"), join(folder, "pot.csv"));
    const lines = typedIn(heading);
    expect(lines.length).toBeGreaterThan(0);
    const run = typeAll(lines, folder);
    expect(run.stderr).toBe("");
    expect(run.status).toBe(0);
  });

  it("names no file or folder that is not there", () => {
    const named = [...readme.matchAll(/\]\(([^)#]+)\)/g)].map(([, path = ""]) => path);
    expect(named.length).toBeGreaterThan(1);
    for (const path of named) expect(existsSync(join(root, path)), path).toBe(true);
  });
});
