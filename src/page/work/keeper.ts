/** Where a kitchen is kept between visits. */

/** A logger's file and where it lies in the kitchen folder. */
export interface RawFile {
  readonly path: string;
  readonly content: Blob;
}

export interface Kept {
  /** kitchen.yaml. */
  readonly text: string;
  /** By SHA-256, in hex. */
  readonly raw: ReadonlyMap<string, RawFile>;
}

/** What was asked for, or why nothing can be kept, as a plain sentence. */
export type Keeping<Value = null> =
  { readonly ok: true; readonly value: Value } | { readonly ok: false; readonly why: string };

/**
 * None of it throws. Each is whole or not at all, and `saveText` sees what is
 * kept at that very moment, so that two windows can keep the same kitchen.
 */
export interface Keeper {
  readonly load: () => Promise<Keeping<Kept | null>>;
  /** Gives the text as it is kept now; where `change` answers null, that stays. */
  readonly saveText: (
    change: (kept: string | null) => string | null,
  ) => Promise<Keeping<string | null>>;
  readonly saveRaw: (sha256: string, raw: RawFile) => Promise<Keeping>;
  readonly removeRaw: (sha256: string) => Promise<Keeping>;
  /** Puts a kitchen in the place of all that was kept. */
  readonly replace: (kept: Kept) => Promise<Keeping>;
  readonly clear: () => Promise<Keeping>;
}
