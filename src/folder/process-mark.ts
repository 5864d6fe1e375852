/** Which process on which machine: tells what a dead process left from what is in use. */
import { createHash } from "node:crypto";
import { readFileSync, readlinkSync } from "node:fs";
import { hostname } from "node:os";

export interface ProcessMark {
  readonly pid: number;
  /** Where that number means something: machine, start of the system, space of process numbers. */
  readonly place: string;
  /** When the system started the process, in its own count; null where it does not say. */
  readonly started: string | null;
}

const textOrNone = (read: () => string): string => {
  try {
    return read();
  } catch {
    return "";
  }
};

/**
 * Names alone do not do: two machines on one shared drive may have one name,
 * and containers on one machine count their processes apart. Linux says both;
 * elsewhere the name has to do.
 */
export const thisPlace: string = createHash("sha256")
  .update(
    JSON.stringify([
      hostname(),
      process.platform,
      textOrNone(() => readFileSync("/proc/sys/kernel/random/boot_id", "utf8")),
      textOrNone(() => readlinkSync("/proc/self/ns/pid")),
    ]),
  )
  .digest("hex")
  .slice(0, 12);

interface SystemEntry {
  readonly state: string;
  readonly started: string;
}

/** Linux, proc(5): fields 3 and 22 of stat; the name before them, in brackets, may hold anything. */
const systemEntry = (pid: number): SystemEntry | null => {
  const text = textOrNone(() => readFileSync(`/proc/${pid}/stat`, "utf8"));
  const fields = text.slice(text.lastIndexOf(")") + 2).split(" ");
  const [state = ""] = fields;
  const started = fields[19];
  return started === undefined ? null : { state, started };
};

export const thisProcess = (): ProcessMark => ({
  pid: process.pid,
  place: thisPlace,
  started: systemEntry(process.pid)?.started ?? null,
});

const answersSignals = (pid: number): boolean => {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    // Not allowed to signal it: somebody else's, and alive.
    return (error as NodeJS.ErrnoException).code !== "ESRCH";
  }
};

/**
 * "unknown": marked at a place whose processes cannot be seen from here. In
 * doubt "running": a number that the system gave out again counts as running,
 * unless the system says that it started at another time.
 */
export const lifeOf = (mark: ProcessMark): "running" | "gone" | "unknown" => {
  if (mark.place !== thisPlace) return "unknown";
  if (!answersSignals(mark.pid)) return "gone";
  const entry = mark.started === null ? null : systemEntry(mark.pid);
  if (entry === null) return "running";
  // Z, X: dead, and only not yet asked for by its parent.
  const dead = entry.state === "Z" || entry.state === "X" || entry.started !== mark.started;
  return dead ? "gone" : "running";
};
