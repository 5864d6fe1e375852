/** Options as typed: every value of each option in order, flags as true. */
export type TypedOptions = Readonly<Record<string, readonly string[] | boolean>>;
