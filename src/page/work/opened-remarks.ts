/** What became of opened files, as sentences. */
import type { Kitchen } from "../../kitchen/kitchen.ts";
import { problemText } from "../../problem.ts";
import type { KitchenState } from "../protocol.ts";
import type { MatchedReadings } from "./matched-readings.ts";

const counted = (count: number, thing: string): string =>
  `${count} ${thing}${count === 1 ? "" : "s"}`;

/** More names would be a list and no sentence. */
const mostNames = 5;

const listed = (names: readonly string[]): string => {
  const more = names.length - mostNames;
  return more <= 0 ? names.join(", ") : `${names.slice(0, mostNames).join(", ")} and ${more} more`;
};

const openedText = (name: string | null, { tests }: Kitchen, taken: number): string | null => {
  if (name !== null) return `Opened ${name} with ${counted(tests.length, "water test")}.`;
  return taken === 0 ? null : `Took in ${counted(taken, "file")} of readings.`;
};

const missingText = (missing: KitchenState["missing"]): string | null =>
  missing.length === 0
    ? null
    : `Still missing: ${listed(missing.map(({ path }) => path))}. Open ${missing.length === 1 ? "it" : "them"} too; until then ${missing.length === 1 ? "its test counts" : "their tests count"} for nothing.`;

const othersText = (others: readonly string[]): string | null =>
  others.length === 0
    ? null
    : `Left aside: ${listed(others)}. No water test of this kitchen lists ${others.length === 1 ? "it" : "them"}; new readings are entered as a new water test.`;

/** `name`: of the kitchen's file; null where only readings were opened. */
export const openedRemarks = (
  { name, kitchen }: { readonly name: string | null; readonly kitchen: Kitchen },
  { found, problems, others }: MatchedReadings,
  missing: KitchenState["missing"],
): readonly string[] =>
  [
    openedText(name, kitchen, found.size),
    ...new Set(problems.map(problemText)),
    missingText(missing),
    othersText(others),
  ].filter((text) => text !== null);
