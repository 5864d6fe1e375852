/** A water test's name, made from what it was where the person gave none. */

/** Letters, digits and single hyphens: what one can type without quotes. */
export const slug = (text: string): string =>
  text
    .normalize("NFKD")
    .replaceAll(/\p{M}/gu, "")
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N}.]+/gu, "-")
    .replaceAll(/^[-.]+|[-.]+$/g, "");

/** ISO day of a wall-clock time given as if in UTC; none for clocks without a date (they stand in 1970). */
const dayOf = (startedAt: number | null): string | null => {
  const day = startedAt === null ? "" : new Date(startedAt).toISOString().slice(0, 10);
  return day === "" || day.startsWith("1970-") ? null : day;
};

/** "step-cooker-38-jars-2026-10-03"; with "-2" and so on where that is taken. */
export const testId = (
  parts: {
    readonly appliance: string;
    readonly setting: string | null;
    readonly container: string;
    readonly startedAt: number | null;
  },
  taken: ReadonlySet<string>,
): string => {
  const day = dayOf(parts.startedAt);
  const words = [parts.appliance, parts.setting, parts.container, day];
  const plain = words
    .map((word) => slug(word ?? ""))
    .filter((word) => word !== "")
    .join("-");
  let id = plain;
  for (let run = 2; taken.has(id); run += 1) id = `${plain}-${run}`;
  return id;
};
