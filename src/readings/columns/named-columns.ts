import { withoutUnit } from "./heading-unit.ts";

const same = (a: string, b: string): boolean =>
  a.trim().toLowerCase().normalize("NFC") === b.trim().toLowerCase().normalize("NFC");

/** Columns that a name means: by heading, by heading without unit, or by number ("2", "column 2") from 1. */
export const columnsNamed = (name: string, names: readonly string[]): number[] => {
  const exact = names.flatMap((heading, at) => (same(heading, name) ? [at] : []));
  if (exact.length > 0) return exact;
  const bare = names.flatMap((heading, at) =>
    heading !== "" && same(withoutUnit(heading), withoutUnit(name)) ? [at] : [],
  );
  if (bare.length > 0) return bare;
  const number = /^(?:column\s*)?(\d+)$/iu.exec(name.trim())?.[1];
  const at = number === undefined ? -1 : Number(number) - 1;
  return at >= 0 && at < names.length ? [at] : [];
};

/** Headings as a person can name them; a column without one is called by its number. */
export const speakingNames = (headings: readonly string[] | null, count: number): string[] =>
  Array.from({ length: count }, (_, at) => {
    const heading = (headings?.[at] ?? "").replaceAll(/\s+/gu, " ").trim();
    return heading === "" ? `column ${at + 1}` : heading;
  });
