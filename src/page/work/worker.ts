/** The page's worker: takes requests from the screen and answers them. */
import "./no-eval.ts";
import type { Asked } from "../protocol.ts";
import { answering } from "./answering.ts";
import { browserKeeper } from "./browser-keeper.ts";
import { memoryStore } from "./memory-store.ts";

declare const self: DedicatedWorkerGlobalScope;
/** Set by the bundler. */
declare const HOLDBAND_VERSION: string;

const take = answering({
  room: {
    store: memoryStore(browserKeeper()),
    desk: { night: null, kitchen: null },
    now: () => new Date(),
    version: HOLDBAND_VERSION,
  },
  // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a worker's has none
  post: (message) => self.postMessage(message),
  clock: () => performance.now(),
});

self.addEventListener("message", ({ data }: MessageEvent<Asked>) => void take(data));
