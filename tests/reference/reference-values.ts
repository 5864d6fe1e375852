/** How closely a value must agree with the published one. */
export type Asked =
  | "as printed"
  | { readonly digits: number }
  | { readonly absolute: number }
  | { readonly relative: number };

/** One published value and what the project finds. */
export interface ReferenceValue {
  readonly what: string;
  /** As its source prints it; a fraction of whole numbers where the source is exact. */
  readonly published: string;
  readonly found: number;
  /** Where it differs from its block's. */
  readonly asked: Asked | null;
}

/** Values of one source, asked for with one tolerance. */
export interface ReferenceBlock {
  readonly source: string;
  readonly asked: Asked;
  /** Why no more and no less is asked. */
  readonly because: string;
  readonly values: readonly ReferenceValue[];
}

/** What one part of the project is held against. */
export interface ReferenceGroup {
  readonly title: string;
  /** Files under src/ that these values check, without ".ts". */
  readonly about: readonly string[];
  readonly blocks: readonly ReferenceBlock[];
}

export const value = (
  what: string,
  published: string,
  found: number,
  asked: Asked | null = null,
): ReferenceValue => ({ what, published, found, asked });
