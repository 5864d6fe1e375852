/** What the log of batches says beside the water tests: batches that separated, and whether that goes with the temperature. */
import type {
  BatchFinding,
  RecheckAdvice,
  SeparationAssociation,
  SeparationCause,
} from "../../advice/recheck-types.ts";
import { percentInWords } from "../number-format.ts";
import type { Writing } from "../writing.ts";
import { probabilityText } from "./probability.ts";
import type { RecheckView } from "./recheck.ts";
import { separationCauseText } from "./separation-causes.ts";

const batchesText = (count: number): string => (count === 1 ? "1 batch" : `${count} batches`);

/** "2 of 3 batches separated", "the only batch separated". */
export const separatedText = ({ batches, separated }: BatchFinding): string =>
  batches === 1
    ? `the only batch ${separated === 1 ? "separated" : "did not separate"}`
    : `${separated} of ${batchesText(batches)} separated`;

type Now = NonNullable<BatchFinding["now"]>;

const byVerdict: Readonly<Record<Now["verdict"], (chance: string) => string>> = {
  holds: (chance) =>
    `temperature is not it, for the newest water test lies inside the window (${chance} likely to hold)`,
  unproven: (chance) =>
    `whether it is the temperature stays open, for the newest water test proves it neither way (${chance} likely to hold)`,
  misses: (chance) =>
    `temperature may well be it, for the newest water test lies outside the window (${chance} likely to hold)`,
};

const untested =
  "nothing is known of the temperature, for this set-up was never tested: test it with water before looking elsewhere";

/** After the culture's name: what separated, and whether the temperature is to blame. */
export const findingText = (
  finding: BatchFinding,
  { analysis, writing }: Pick<RecheckView, "analysis" | "writing">,
): string => {
  const { now } = finding;
  if (now === null) return `${separatedText(finding)}; ${untested}.`;
  const chance = probabilityText(now.probability, analysis.confidence, writing.space);
  return `${separatedText(finding)}; ${byVerdict[now.verdict](chance)}.`;
};

/** The log's own causes, without what it is silent about. */
export const loggedCauses = ({ causes }: BatchFinding): readonly SeparationCause[] =>
  causes.filter(({ code }) => code !== "not-logged");

/** Above the list of causes, or in its place; null where the temperature is to blame. */
export const causesTitle = (finding: BatchFinding): string | null => {
  const { now, separated } = finding;
  if (separated === 0 || now?.verdict === "misses") return null;
  if (loggedCauses(finding).length === 0) return "The log points to no other cause.";
  return now?.verdict === "holds"
    ? "What else it may be, likeliest first by the log:"
    : "What it may be beside the temperature, likeliest first by the log:";
};

/** Below it: what the log is silent about, or what no log holds; null below a list that lacks nothing. */
export const silenceText = (finding: BatchFinding, writing: Writing): string | null => {
  if (causesTitle(finding) === null) return null;
  const missing = finding.causes.find(({ code }) => code === "not-logged");
  if (missing !== undefined) {
    const { what, next } = separationCauseText(missing, writing);
    return `${what} ${next}`;
  }
  return loggedCauses(finding).length > 0
    ? null
    : "Look at what it does not hold: another starter, other milk, a jar that was not clean.";
};

const outOf = (separated: number, sound: number, where: string): string =>
  `${separated} of ${batchesText(separated + sound)} from set-ups whose holding band lay ${where} the window separated`;

/** Below this, chance is called seldom: the usual level. */
const seldom = 0.05;

const associated = (one: SeparationAssociation, { space }: Writing): string => {
  const inside = outOf(one.insideSeparated, one.insideSound, "inside");
  const outside = `${one.outsideSeparated} of ${one.outsideSeparated + one.outsideSound} from others`;
  const chance = percentInWords(one.probability, space);
  const follows =
    one.probability > seldom
      ? "so the log does not show that separation goes with the temperature"
      : "so in this log separation goes with the temperature, which does not yet make it the cause";
  return `over the log, ${inside}, ${outside}; chance alone would part them so unevenly with a probability of ${chance} (Fisher’s exact test), ${follows}.`;
};

const tooShort = (cultures: readonly string[]): string =>
  `The log of ${cultures.join(", ")} is still too short to say whether separation goes with the temperature.`;

/**
 * A sentence for each culture of whose whole log, whatever the set-up, something
 * can be said, and one for all those that separated and whose log is too short;
 * first generations do not count.
 *
 * @param mark how a culture is called
 */
export const associationTexts = (
  { findings }: Pick<RecheckAdvice, "findings">,
  mark: (culture: string) => string,
  writing: Writing,
): readonly string[] => {
  const cultures = [...new Set(findings.map(({ culture }) => culture))].map((culture) => {
    const own = findings.filter((one) => one.culture === culture);
    const separated = own.some((one) => one.separated > 0);
    return { name: mark(culture), association: own[0]?.association ?? null, separated };
  });
  const known = cultures.flatMap(({ name, association }) =>
    association === null ? [] : [`${name}: ${associated(association, writing)}`],
  );
  const short = cultures.filter(({ association, separated }) => association === null && separated);
  return short.length === 0 ? known : [...known, tooShort(short.map(({ name }) => name))];
};
