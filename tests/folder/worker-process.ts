/** Starting kitchen-worker.ts as processes of their own, quickly: bundled once, run by plain Node. */
import { spawn } from "node:child_process";
import { once } from "node:events";
import { join } from "node:path";
import { createInterface } from "node:readline";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";

export const bundleWorker = async (folder: string): Promise<string> => {
  const outfile = join(folder, "kitchen-worker.mjs");
  await build({
    entryPoints: [fileURLToPath(new URL("kitchen-worker.ts", import.meta.url))],
    outfile,
    bundle: true,
    format: "esm",
    platform: "node",
    target: "node20",
    logLevel: "warning",
  });
  return outfile;
};

export interface Worker {
  readonly pid: number;
  /** Resolves once the worker has begun. */
  readonly ready: Promise<void>;
  readonly kill: () => void;
  /** All it said, once it has ended. */
  readonly ended: Promise<{
    readonly lines: readonly string[];
    readonly signal: string | null;
    readonly code: number | null;
  }>;
}

export const startWorker = (bundle: string, line: readonly string[]): Worker => {
  const child = spawn(process.execPath, [bundle, ...line], {
    stdio: ["ignore", "pipe", "inherit"],
  });
  const lines: string[] = [];
  const reader = createInterface({ input: child.stdout });
  reader.on("line", (text) => lines.push(text));
  const closed = once(child, "close") as Promise<[number | null, string | null]>;
  return {
    pid: child.pid ?? 0,
    ready: Promise.race([once(reader, "line"), closed]).then(() => undefined),
    kill: () => void child.kill("SIGKILL"),
    ended: closed.then(([code, signal]) => ({ lines, signal, code })),
  };
};
