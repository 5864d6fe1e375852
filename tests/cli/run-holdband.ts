/** Runs the built program as its users do: a process of its own. */
import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readdirSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { onTestFinished } from "vitest";

export const root = fileURLToPath(new URL("../../", import.meta.url));
export const program = join(root, "dist", "holdband.js");

export interface Run {
  readonly out: string;
  readonly err: string;
  readonly exitCode: number | null;
}

/** `npm test` builds first; running vitest alone needs `npm run build` once. */
export const holdband = (
  line: readonly string[],
  options: {
    readonly cwd?: string;
    readonly env?: Readonly<Record<string, string>>;
    /** What comes through its pipe. */
    readonly input?: string;
  } = {},
): Run => {
  if (!existsSync(program)) throw new Error("dist/holdband.js is missing: npm run build");
  const { stdout, stderr, status } = spawnSync(process.execPath, [program, ...line], {
    cwd: options.cwd ?? root,
    encoding: "utf8",
    maxBuffer: 64 * 1024 * 1024,
    ...(options.input === undefined ? {} : { input: options.input }),
    env: { PATH: process.env["PATH"] ?? "", LANG: "C.UTF-8", TZ: "UTC", ...options.env },
  });
  return { out: stdout, err: stderr, exitCode: status };
};

/** A folder that is gone after the test. */
export const temporaryFolder = (): string => {
  const folder = mkdtempSync(join(tmpdir(), "holdband-"));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
};

/** Every file under a folder with its size and time: what "nothing was written" is checked by. */
export const listing = (folder: string): readonly string[] =>
  readdirSync(folder, { recursive: true, encoding: "utf8" })
    .map((name) => {
      const { size, mtimeMs } = statSync(join(folder, name));
      return `${name} ${size} ${mtimeMs}`;
    })
    .toSorted();

export const write = (folder: string, name: string, text: string | Uint8Array): string => {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
};

export interface ContractVerdict {
  readonly culture: string;
  readonly low: number;
  readonly high: number;
  readonly ceiling: number | null;
  readonly hours: number;
  readonly verdict: "holds" | "misses" | "unproven";
  readonly probability: number;
  readonly reasons: readonly string[];
}

export interface ContractProbe {
  readonly name: string;
  readonly role: string;
  readonly phases: readonly {
    readonly kind: string;
    readonly fromMinute: number;
    readonly toMinute: number;
  }[];
  readonly hold: Readonly<Record<string, unknown>> | null;
  readonly verdicts: readonly ContractVerdict[];
}

/** The parts of contract version 1 that the tests look at. */
export interface Contract {
  readonly holdband: string;
  readonly contract: number;
  readonly files: readonly {
    readonly name: string;
    readonly sha256: string;
    readonly rowsRead: number;
    readonly rowsUsed: number;
    readonly setAside: readonly { readonly reason: string; readonly count: number }[];
    readonly intervalSeconds: number;
    readonly unit: string;
    readonly timeFormat: string;
    readonly delimiter: string;
    readonly decimal: string;
  }[];
  readonly probes: readonly ContractProbe[];
  readonly problem?: { readonly code: string; readonly text: string };
}

export const contractOf = (run: Run): Contract => JSON.parse(run.out) as Contract;
