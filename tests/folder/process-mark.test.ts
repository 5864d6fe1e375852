import { spawn, spawnSync } from "node:child_process";
import { once } from "node:events";
import { describe, expect, it } from "vitest";
import { lifeOf, thisPlace, thisProcess } from "../../src/folder/process-mark.ts";

describe("lifeOf", () => {
  it("knows this process to run", () => {
    expect(lifeOf(thisProcess())).toBe("running");
    expect(thisPlace).toMatch(/^[0-9a-f]{12}$/);
  });

  it("knows an ended process to be gone, as soon as it is killed", async () => {
    const { pid } = spawnSync(process.execPath, ["-e", "0"]);
    expect(lifeOf({ pid, place: thisPlace, started: null })).toBe("gone");
    const child = spawn("sleep", ["60"]);
    const mark = { pid: child.pid ?? 0, place: thisPlace, started: null };
    expect(lifeOf(mark)).toBe("running");
    child.kill("SIGKILL");
    await once(child, "exit");
    expect(lifeOf(mark)).toBe("gone");
  });

  it("cannot tell of another place", () => {
    expect(lifeOf({ ...thisProcess(), place: "0123456789ab" })).toBe("unknown");
  });

  it.skipIf(process.platform !== "linux")(
    "tells a process from a later one of the same number",
    () => {
      expect(thisProcess().started).toMatch(/^\d+$/);
      expect(lifeOf({ ...thisProcess(), started: "1" })).toBe("gone");
    },
  );

  it.skipIf(process.platform !== "linux")("takes a dead child not yet asked for as gone", () => {
    // The shell ends its child and sleeps on without asking for it.
    const script = "sleep 0 & echo $!; exec sleep 5";
    const shell = spawn("sh", ["-c", script], { stdio: ["ignore", "pipe", "ignore"] });
    return once(shell.stdout, "data").then(async ([data]) => {
      const pid = Number(String(data));
      await new Promise((resolve) => setTimeout(resolve, 200));
      // Still there for the system, or this would show nothing.
      expect(() => process.kill(pid, 0)).not.toThrow();
      expect(lifeOf({ pid, place: thisPlace, started: "0" })).toBe("gone");
      shell.kill("SIGKILL");
    });
  });
});
