/** A kitchen in memory, for tests of how a water test is stored; any of its steps can be made to fail. */
import { createHash } from "node:crypto";
import type {
  KeptRaw,
  KitchenStore,
  OpenedSource,
} from "../../../src/input/water-test/kitchen-store.ts";
import type { TypedText } from "../../../src/input/water-test/new-test.ts";
import { done } from "../../../src/problem.ts";
import type { Outcome } from "../../../src/problem.ts";

export interface Memory {
  readonly store: KitchenStore<TypedText>;
  text: () => string;
  readonly raw: ReadonlyMap<string, string>;
  /** What was asked of it, in order. */
  readonly calls: readonly string[];
}

const hashOf = (text: string): string => createHash("sha256").update(text).digest("hex");

const opened = (name: string, text: string, onBytes: (count: number) => void): OpenedSource => {
  const bytes = new TextEncoder().encode(text);
  const chunks = async function* (): AsyncGenerator<Uint8Array> {
    onBytes(bytes.length);
    yield bytes;
  };
  const sha256 = (): string => hashOf(text);
  return { name, bytes: bytes.length, chunks: chunks(), sha256, broken: () => null };
};

export const memory = (
  start: string,
  instead: {
    readonly update?: () => Outcome<void>;
    /** The file's text when it is copied, where it was changed after it was read. */
    readonly copied?: (text: string) => string;
  } = {},
): Memory => {
  let text = start;
  const raw = new Map<string, string>();
  const calls: string[] = [];
  const store: KitchenStore<TypedText, KeptRaw> = {
    read: async () => done({ file: "kitchen.yaml", text }),
    update: async (edit) => {
      calls.push("update");
      if (instead.update !== undefined) return instead.update();
      const edited = edit(text);
      if (!edited.ok) return edited;
      text = edited.value;
      return done(undefined);
    },
    openSource: async ({ name, source }, onBytes) => {
      calls.push("open");
      return done(opened(name, source.text, onBytes));
    },
    keepRaw: async ({ name, source }) => {
      calls.push("keep");
      const kept = instead.copied?.(source.text) ?? source.text;
      raw.set(`readings/${name}`, kept);
      return done({ path: `readings/${name}`, sha256: hashOf(kept) });
    },
    takeBack: async ({ path }) => {
      calls.push("take back");
      raw.delete(path);
    },
  };
  return { store, text: () => text, raw, calls };
};
