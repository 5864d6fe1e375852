import { afterEach, expect, it, vi } from "vitest";
import type { FromWorker } from "../../../src/page/protocol.ts";
import * as z from "zod";

afterEach(() => {
  vi.unstubAllGlobals();
  vi.resetModules();
});

it("answers what the screen asks, and compiles no code from text", async () => {
  const posted: FromWorker[] = [];
  const listeners: ((event: { data: unknown }) => void)[] = [];
  vi.stubGlobal("HOLDBAND_VERSION", "9.9.9");
  vi.stubGlobal("self", {
    addEventListener: (_: string, listener: (event: { data: unknown }) => void) =>
      listeners.push(listener),
    postMessage: (message: FromWorker) => posted.push(message),
  });
  await import("../../../src/page/work/worker.ts");
  expect(z.config().jitless).toBe(true);
  listeners[0]?.({ data: { id: 5, name: "start", asked: null } });
  await vi.waitFor(() => expect(posted).toHaveLength(1), { timeout: 20_000 });
  // Node has no IndexedDB: the worker says so and goes on.
  expect(posted[0]).toMatchObject({
    id: 5,
    outcome: { ok: true, value: { version: "9.9.9", notKept: expect.stringMatching(/not kept/) } },
  });
});
