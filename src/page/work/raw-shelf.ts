/** The kitchen's logger files in memory, by SHA-256, and which of them the browser keeps. */
import type { Keeper, RawFile } from "./keeper.ts";

export interface RawShelf {
  readonly all: () => ReadonlyMap<string, RawFile>;
  /** What the browser keeps already. */
  readonly load: (files: ReadonlyMap<string, RawFile>) => void;
  /** New files, kept at once if that can be. */
  readonly put: (files: ReadonlyMap<string, RawFile>) => Promise<void>;
  readonly drop: (sha256: string) => Promise<void>;
  /** These and no others; `kept`: the browser keeps them already. */
  readonly reset: (files: ReadonlyMap<string, RawFile>, kept: boolean) => void;
  /** Tries again what could not be kept; `all`: everything, for the browser may have lost it. */
  readonly keep: (which: "unkept" | "all") => Promise<void>;
  /** Why something is not kept; null where all is. */
  readonly why: () => string | null;
}

export const rawShelf = (keeper: Pick<Keeper, "saveRaw" | "removeRaw">): RawShelf => {
  let files = new Map<string, RawFile>();
  let unkept = new Set<string>();
  let why: string | null = null;

  /** The first that finds no room ends it. */
  const keepUnkept = async (): Promise<void> => {
    why = null;
    for (const sha256 of unkept) {
      const one = files.get(sha256);
      // oxlint-disable-next-line no-await-in-loop -- one after the other: memory
      const saved = one === undefined ? null : await keeper.saveRaw(sha256, one);
      if (saved?.ok === false) {
        why = saved.why;
        return;
      }
      unkept.delete(sha256);
    }
  };

  return {
    all: () => files,
    load: (more) => {
      files = new Map([...files, ...more]);
    },
    put: async (more) => {
      files = new Map([...files, ...more]);
      unkept = new Set([...unkept, ...more.keys()]);
      await keepUnkept();
    },
    drop: async (sha256) => {
      files.delete(sha256);
      if (!unkept.delete(sha256)) await keeper.removeRaw(sha256);
    },
    reset: (only, kept) => {
      files = new Map(only);
      unkept = new Set(kept ? [] : only.keys());
      why = null;
    },
    keep: async (which) => {
      if (which === "all") unkept = new Set(files.keys());
      await keepUnkept();
    },
    why: () => why,
  };
};
