/** Other causes of separation than the temperature: what the log shows, and what to try next. */
import type { SeparationCause } from "../../advice/recheck-types.ts";
import { percent, short } from "../number-format.ts";
import { askedTemperature } from "../temperature-text.ts";
import type { Writing } from "../writing.ts";

export interface CauseText {
  /** The cause in a few words, with what in the log points to it. */
  readonly what: string;
  readonly next: string;
}

type Of<Code extends SeparationCause["code"]> = Extract<SeparationCause, { readonly code: Code }>;
type Sentences = {
  readonly [Code in SeparationCause["code"]]: (cause: Of<Code>, writing: Writing) => CauseText;
};

const of = (batches: number): string => (batches === 1 ? "1 of them" : `${batches} of them`);
const was = (batches: number): string => (batches === 1 ? "was" : "were");

/** As the log names them, and as one says them. */
const logged: Readonly<Record<string, string>> = {
  generation: "the generation",
  hours: "the hours held",
  milk: "the kind of milk",
  heated: "whether the milk was heated",
  starter: "the amount of starter",
  moved: "whether it was moved",
};

const listed = (words: readonly string[]): string =>
  words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} and ${words.at(-1) ?? ""}`;

/** What is common practice has no source, and says so. */
const sentences: Sentences = {
  contamination: ({ batches }) => ({
    what: `Something else grew in it: ${of(batches)} ${was(batches)} pink, orange, fuzzy or off-smelling.`,
    next: "Discard all of it, clean everything it touched, and start again from a fresh starter.",
  }),
  "first-generation": ({ batches }) => ({
    what: `A fresh starter: ${of(batches)} ${was(batches)} its first generation, which often separates (common practice, no source).`,
    next: "Set the next batch with some of this one, and judge from the second generation on.",
  }),
  "held-too-long": ({ equivalentHours, wantedHours }, { space }) => ({
    what: `Held too long for its temperature: it counts as ${short(equivalentHours, 0)}${space}h, and ${short(wantedHours, 0)}${space}h would do (an estimate, by the growth model where the culture’s limits are known).`,
    next: "End the next batch as soon as the hours asked for are over, and cool it at once.",
  }),
  "thin-milk": ({ batches }) => ({
    what: `Thin milk: ${of(batches)} ${was(batches)} skimmed or watered, and little protein keeps little whey (common practice, no source).`,
    next: "Use whole milk for the next one, or stir some milk powder into it.",
  }),
  "unheated-milk": ({ batches }, writing) => ({
    what: `Milk that was not heated: so ${of(batches)}; heated milk keeps its whey better (common practice, no source).`,
    next: `Heat the next milk first, usually to ${askedTemperature(writing, 90)} for 10${writing.space}min (common practice), and let it cool before the culture goes in.`,
  }),
  "moved-while-setting": ({ batches }) => ({
    what: `Moved while it set: ${of(batches)} ${was(batches)} moved or shaken, which breaks the curd (common practice, no source).`,
    next: "Leave the next one where it stands until it has set and cooled.",
  }),
  "much-starter": ({ starter, batches }, { space }) => ({
    what: `Too much starter: up to ${percent(starter, space)} in ${of(batches)}, where 2 to 5${space}% are usual; more sours too fast (common practice, no source).`,
    next: `Take 2 to 5${space}% of starter for the next one.`,
  }),
  "not-logged": ({ missing }) => ({
    what: `Of the batches that separated the log does not say ${listed(missing.map((name) => logged[name] ?? name))}.`,
    next: "Say so with the next ones, so that a cause can show.",
  }),
};

export const separationCauseText = <Code extends SeparationCause["code"]>(
  cause: Of<Code>,
  writing: Writing,
): CauseText => (sentences[cause.code as Code] as Sentences[Code])(cause, writing);
