/**
 * Makes this process die by SIGKILL at its n-th step that changes a file, and
 * half-way through where the step writes content. Real system calls, real
 * death; only the instant is chosen: every one in turn instead of by chance.
 */
import files from "node:fs/promises";
import type { FileHandle } from "node:fs/promises";
import { syncBuiltinESMExports } from "node:module";
import { tmpdir } from "node:os";

type Step = (this: unknown, ...values: unknown[]) => Promise<unknown>;
type Steps = Record<string, Step>;

const named = ["open", "link", "rename", "rm", "mkdir", "chmod", "copyFile", "writeFile"];
const ofHandles = ["write", "writeFile", "sync", "chmod"];

const halfOf = (content: unknown): Buffer => {
  const bytes = Buffer.from(content as string | Uint8Array);
  return bytes.subarray(0, Math.ceil(bytes.length / 2));
};

/** 0: never. Gives what tells how many steps there were. */
export const dieAtStep = async (at: number): Promise<() => number> => {
  let steps = 0;
  const wrap = (owner: Steps, name: string, contentAt: number): void => {
    const real = owner[name];
    if (real === undefined) throw new Error(`no ${name}`);
    owner[name] = async function step(this: unknown, ...values: unknown[]) {
      steps += 1;
      if (steps !== at) return real.apply(this, values);
      if (contentAt >= 0) {
        const half = halfOf(values[contentAt]);
        await real.apply(this, values.toSpliced(contentAt, values.length, half));
      }
      process.kill(process.pid, "SIGKILL");
      throw new Error("alive");
    };
  };
  const handle: FileHandle = await files.open(tmpdir(), "r");
  const prototype = Object.getPrototypeOf(handle) as Steps;
  await handle.close();
  for (const name of ofHandles) wrap(prototype, name, name.startsWith("write") ? 0 : -1);
  for (const name of named) {
    wrap(files as unknown as Steps, name, name === "writeFile" ? 1 : -1);
  }
  syncBuiltinESMExports();
  return () => steps;
};
