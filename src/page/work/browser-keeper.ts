/** Keeps a kitchen in the browser's own store (IndexedDB), in a database of its own. */
import { clear, createStore, entries, promisifyRequest, set, update, del } from "idb-keyval";
import type { UseStore } from "idb-keyval";
import type { Keeper, Keeping, Kept, RawFile } from "./keeper.ts";

const textKey = "kitchen.yaml";
const rawPrefix = "raw ";

/** A store that never answers, as some browsers have it where nothing may be kept, must not hold up the page. */
const patience = 5000;

const whys: Readonly<Record<string, string>> = {
  QuotaExceededError: "the browser has no more room for it",
  SecurityError: "the browser keeps nothing for pages opened this way",
  InvalidStateError: "the browser keeps nothing for pages opened this way",
  ReferenceError: "the browser keeps nothing for pages opened this way",
  TimeoutError: "the browser's store does not answer",
};

const whyNot = (error: unknown): string => {
  const name = error instanceof Error ? error.name : "";
  return whys[name] ?? `the browser's store failed${name === "" ? "" : ` (${name})`}`;
};

const inTime = <Value>(work: Promise<Value>): Promise<Value> => {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const late = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(new DOMException("no answer", "TimeoutError")), patience);
  });
  return Promise.race([work, late]).finally(() => clearTimeout(timer));
};

const kept = async <Value>(work: () => Promise<Value>): Promise<Keeping<Value>> => {
  try {
    return { ok: true, value: await work() };
  } catch (error) {
    return { ok: false, why: whyNot(error) };
  }
};

const nothing = (): null => null;

const isRaw = (value: unknown): value is RawFile =>
  typeof value === "object" && value !== null && "path" in value && "content" in value;

const found = (all: readonly (readonly [IDBValidKey, unknown])[]): Kept | null => {
  const text = all.find(([key]) => key === textKey)?.[1];
  if (typeof text !== "string") return null;
  const raw = new Map<string, RawFile>();
  for (const [key, value] of all) {
    if (typeof key !== "string" || !key.startsWith(rawPrefix) || !isRaw(value)) continue;
    raw.set(key.slice(rawPrefix.length), value);
  }
  return { text, raw };
};

/** In one transaction: emptied, then filled. */
const putAll = (store: UseStore, { text, raw }: Kept): Promise<void> =>
  store("readwrite", (objects) => {
    objects.clear();
    objects.put(text, textKey);
    for (const [sha256, one] of raw) objects.put(one, rawPrefix + sha256);
    return promisifyRequest(objects.transaction);
  });

/** `database` is another one in tests only. */
export const browserKeeper = (database = "holdband"): Keeper => {
  const store: UseStore = createStore(database, "kitchen");
  return {
    load: () => kept(() => inTime(entries<string, unknown>(store)).then(found)),
    saveText: (change) =>
      kept(async () => {
        let before: string | null = null;
        const next = (old: string | undefined): string | undefined => {
          before = old ?? null;
          return change(before) ?? old;
        };
        // What is not there and stays so is written as nothing, which `found` takes for nothing.
        await update<string | undefined>(textKey, next, store);
        return before;
      }),
    saveRaw: (sha256, raw) => kept(() => set(rawPrefix + sha256, raw, store).then(nothing)),
    removeRaw: (sha256) => kept(() => del(rawPrefix + sha256, store).then(nothing)),
    replace: (all) => kept(() => putAll(store, all).then(nothing)),
    clear: () => kept(() => clear(store).then(nothing)),
  };
};
