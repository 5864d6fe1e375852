import { headingWords } from "./headings.ts";
import type { ReadingOptions } from "../readings-file.ts";
import type { ProbeRole, Series } from "../series.ts";

const room =
  /(?:^| )(?:room|ambient|ambiente|ambiance|air|kitchen|outside|outdoor|raum\w*|zimmer\w*|umgebung\w*|luft|kuche|piece|cuisine|habitacion|cocina|stanza|cucina|huone|rum|rom|kamer)(?: |$)/u;
const bath =
  /(?:^| )(?:bath|basin|jacket|waterbath|wasserbad|bad|bain|bano|bagno|haude|vattenbad|vannbad|waterbad)(?: |$)/u;

/** The role a probe's heading says it has; a probe that says nothing sat in the food's place. */
export const guessRole = (name: string): ProbeRole => {
  const words = headingWords(name);
  if (room.test(words)) return "room";
  return bath.test(words) ? "bath" : "food";
};

/** Names of the probes: their headings without units, "probe 1" where there is none, no two alike. */
export const probeNames = (
  columns: readonly { readonly heading: string; readonly bareName: string }[],
): string[] => {
  const taken = new Set<string>();
  return columns.map(({ heading, bareName }, at) => {
    const bare = bareName.replaceAll(/\s+/gu, " ");
    const base = bare !== "" ? bare : heading === "" ? `probe ${at + 1}` : "temperature";
    let name = base;
    for (let next = 2; taken.has(name); next += 1) name = `${base} ${next}`;
    taken.add(name);
    return name;
  });
};

/** Whether a person who says `said` means this probe: its name or its whole heading, in any case. */
export const meansProbe = (said: string, { name, heading }: Pick<Series, "name" | "heading">) =>
  [name, heading ?? ""].some((one) => one.trim().toLowerCase() === said.trim().toLowerCase());

/** The role said for a probe by its heading, by its name, or guessed. */
export const roleOf = (
  name: string,
  heading: string,
  roles: ReadingOptions["roles"],
): ProbeRole => {
  for (const [said, role] of roles ?? []) if (meansProbe(said, { name, heading })) return role;
  return guessRole(name);
};
