/**
 * The figures for speed and memory, all measured in one run so that the ratios
 * mean something on any machine.
 *
 *   npm run bench              all of it (a few minutes)
 *   npm run bench -- --quick   without the five million rows
 */
import { spawnSync } from "node:child_process";
import { closeSync, mkdtempSync, openSync, rmSync, writeSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { timePage } from "./page.ts";

const root = fileURLToPath(new URL("../../", import.meta.url));
const program = join(root, "dist", "holdband.js");
const folder = mkdtempSync(join(tmpdir(), "holdband-bench-"));

interface Measured {
  readonly seconds: number;
  /** Largest resident set, MB; null where /usr/bin/time is missing. */
  readonly megabytes: number | null;
}

const hasTime = spawnSync("/usr/bin/time", ["-f", "%M", "true"]).status === 0;

const measure = (line: readonly string[]): Measured => {
  const command = hasTime ? ["/usr/bin/time", "-f", "%M", ...line] : [...line];
  const start = process.hrtime.bigint();
  const { status, stderr } = spawnSync(command[0] ?? "", command.slice(1), {
    encoding: "utf8",
    maxBuffer: 1 << 28,
  });
  const seconds = Number(process.hrtime.bigint() - start) / 1e9;
  if (status !== 0) throw new Error(`${line.join(" ")}: ${stderr.slice(0, 300)}`);
  const kilobytes = Number(stderr.trim().split("\n").at(-1));
  return { seconds, megabytes: hasTime ? kilobytes / 1024 : null };
};

/** Median of several runs: a busy machine slows some of them. */
const median = (runs: number, line: readonly string[]): Measured => {
  const all = Array.from({ length: runs }, () => measure(line));
  const sorted = all.toSorted((a, b) => a.seconds - b.seconds);
  return sorted[Math.floor(runs / 2)] ?? measure(line);
};

/** A thermostatted night: warm-up, then a swing of 0.4 degC, with a repeating scatter. */
const writeNight = (name: string, rows: number, everySeconds: number, probes: number): string => {
  const path = join(folder, name);
  const file = openSync(path, "w");
  const headings = Array.from({ length: probes }, (_, at) => `Jar ${at + 1} (°C)`);
  const start = Date.UTC(2026, 0, 5, 20, 0, 0);
  let part = `Time,${headings.join(",")}\n`;
  for (let row = 0; row < rows; row += 1) {
    const seconds = row * everySeconds;
    const rise = 18 * Math.exp(-seconds / 3000);
    const cells = headings.map((_, at) => {
      const scatter = (((row * 7919 + at * 104_729) % 101) - 50) / 1000;
      return (38 + at / 10 - rise + 0.2 * Math.sin(seconds / 290) + scatter).toFixed(2);
    });
    const stamp = new Date(start + seconds * 1000).toISOString().slice(0, 19);
    part += `${stamp},${cells.join(",")}\n`;
    if (part.length > 1 << 20) {
      writeSync(file, part);
      part = "";
    }
  }
  writeSync(file, part);
  closeSync(file);
  return path;
};

/** The same file through the CSV library alone, every record looked at once. */
const bareParse = (path: string): readonly string[] => [
  process.execPath,
  join(root, "tests", "bench", "bare-parse.mjs"),
  path,
];

const window = ["--low", "37", "--high", "39", "--hours", "36", "--thermometer-accuracy", "0.5"];
const rows: (readonly [what: string, found: string, figure: string, met: boolean | null])[] = [];
const quick = process.argv.includes("--quick");
const two = (value: number): string => value.toFixed(2);

const benchHelp = (): void => {
  const empty = median(21, [process.execPath, "-e", "0"]);
  const help = median(21, [process.execPath, program, "--help"]);
  const ratio = help.seconds / empty.seconds;
  rows.push(["--help against node -e 0", `${two(ratio)} x`, "<= 2 x", ratio <= 2]);
};

const benchNight = (): void => {
  const night = writeNight("night.csv", 43_200, 1, 4);
  const bare = median(5, bareParse(night));
  const report = join(folder, "night.html");
  const whole = median(5, [
    process.execPath,
    program,
    "check",
    night,
    ...window,
    "--report",
    report,
  ]);
  const limit = 3 * bare.seconds + 0.8;
  rows.push(["csv-parse alone, 43,200 rows x 4", `${two(bare.seconds)} s`, "", null]);
  rows.push([
    "the same file to HTML, whole process",
    `${two(whole.seconds)} s`,
    `<= 3 x + 0.8 s = ${two(limit)} s`,
    whole.seconds <= limit,
  ]);
};

/** The night that the command line read, in the page; and a long one, to see whether the screen goes on. */
const benchPage = async (): Promise<void> => {
  const night = await timePage(join(folder, "night.csv"), 5);
  if (night === null) {
    rows.push(["the page", "no Chromium found", "", null]);
    return;
  }
  const { verdict } = night;
  rows.push(["page: 43,200 rows x 4 to verdict", `${two(verdict)} s`, "< 2 s", verdict < 2]);
  if (quick) return;
  const long = await timePage(writeNight("million.csv", 1_000_000, 1, 1), 1);
  const still = long?.longestStill ?? 0;
  const found = `${two(long?.verdict ?? 0)} s, longest stand-still ${two(still)} s`;
  rows.push(["page: a million rows", found, "no stand-still of 0.5 s", still < 0.5]);
};

const memory = ({ megabytes }: Measured): string =>
  megabytes === null ? "memory not measured" : `${megabytes.toFixed(0)} MB`;

const benchMillions = (): void => {
  const seconds: number[] = [];
  for (const millions of [1, 5]) {
    const path = writeNight("long.csv", millions * 1_000_000, 1, 1);
    const bare = measure(bareParse(path));
    const found = measure([process.execPath, program, "check", path, ...window, "--json"]);
    rmSync(path);
    seconds.push(found.seconds);
    const met = found.megabytes === null ? null : found.megabytes < 700;
    const what = `${millions} million rows (csv-parse alone ${two(bare.seconds)} s)`;
    rows.push([what, `${two(found.seconds)} s, ${memory(found)}`, "< 700 MB", met]);
  }
  const growth = (seconds[1] ?? 0) / (seconds[0] ?? 1);
  // Linear is five; start-up makes it less, a cache that no longer fits a little more.
  rows.push(["time, 5 million against 1", `${two(growth)} x`, "<= 6 x (linear)", growth <= 6]);
};

try {
  benchHelp();
  benchNight();
  await benchPage();
  if (!quick) benchMillions();
} finally {
  rmSync(folder, { recursive: true, force: true });
}

const widths = [0, 1, 2].map((at) => Math.max(...rows.map((row) => String(row[at]).length)));
for (const [what, found, figure, met] of rows) {
  const mark = met === null ? "" : met ? "met" : "MISSED";
  const cells = [what, found, figure].map((cell, at) => cell.padEnd(widths[at] ?? 0));
  console.log(`${cells.join("  ")}  ${mark}`);
}
process.exitCode = rows.some(([, , , met]) => met === false) ? 1 : 0;
