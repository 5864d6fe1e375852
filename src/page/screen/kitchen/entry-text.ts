/** An entry of kitchen.yaml in one line, in the words it is written in. */
import type { WrittenEntry } from "../../protocol.ts";

const labels: Readonly<Record<string, string>> = {
  moved: "moved or repaired",
  changed: "changed",
  fill: "filled with",
  generation: "generation",
  accuracy: "good to plus or minus",
  resolution: "display step",
};

const valueText = (value: unknown): string => {
  if (value === true) return "yes";
  if (value === false) return "no";
  if (Array.isArray(value)) return value.map(valueText).join(", ");
  if (typeof value === "object" && value !== null) return entryText(value as WrittenEntry, []);
  return String(value);
};

/** `without`: keys that stand elsewhere. */
export const entryText = (entry: WrittenEntry, without: readonly string[]): string =>
  Object.entries(entry)
    .filter(([key, value]) => !without.includes(key) && value !== null)
    .map(([key, value]) => `${labels[key] ?? key}: ${valueText(value)}`)
    .join("; ");
