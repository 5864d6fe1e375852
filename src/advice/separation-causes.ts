import type { Culture, GrowthLimits } from "../culture/culture.ts";
import { equivalentHours } from "../culture/growth-over-hold.ts";
import type { Batch } from "../kitchen/kitchen.ts";
import type { SeparationCause } from "./recheck-types.ts";
import { isSeparated } from "./separation-association.ts";

/** Held so much longer than the culture asks, as hours at the optimum, whey parts from the curd (common practice, no source). */
const tooLong = 1.25;
/** More starter than this sours too fast (common practice, no source: 2 to 5 % is usual). */
const muchStarter = 0.1;

/** What could be logged, as kitchen.yaml names it, and whether a batch says it. */
const loggable: readonly (readonly [name: string, said: (batch: Batch) => boolean])[] = [
  ["generation", ({ generation }) => generation !== null],
  ["hours", ({ hours }) => hours !== null],
  ["milk", ({ milk }) => milk !== null],
  ["heated", ({ heated }) => heated !== null],
  ["starter", ({ starter }) => starter !== null],
  ["moved", ({ moved }) => moved !== null],
];

export interface CauseContext {
  readonly culture: Culture;
  /** Hold mean of the set-up, degC; null where it was never tested. */
  readonly level: number | null;
}

/**
 * Causes of separation other than the temperature, for the batches of one
 * culture in one set-up. Contamination stands first, for such a batch is thrown
 * away; then a fresh starter's first generation; then what more of the separated
 * batches show than of the sound ones, most telling first; what the log is
 * silent about stands last.
 */
export const separationCauses = (
  batches: readonly Batch[],
  context: CauseContext,
): readonly SeparationCause[] => {
  const separated = batches.filter(isSeparated);
  const sound = batches.filter((batch) => batch.separated === "none");
  if (separated.length === 0) return [];
  const found = marksOf(context)
    .map((mark) => {
      const having = separated.filter(mark.has);
      const share = having.length / separated.length;
      const soundShare = sound.length === 0 ? 0 : sound.filter(mark.has).length / sound.length;
      return { mark, having, telling: share - soundShare };
    })
    .filter(({ having, telling }) => having.length > 0 && telling > 0)
    .toSorted((a, b) => b.mark.first - a.mark.first || b.telling - a.telling)
    .map(({ mark, having }) => mark.cause(having));
  const missing = loggable.filter(([, said]) => !separated.some(said)).map(([name]) => name);
  return missing.length === 0 ? found : [...found, { code: "not-logged", missing }];
};

interface Mark {
  readonly has: (batch: Batch) => boolean;
  readonly cause: (batches: readonly Batch[]) => SeparationCause;
  /** Higher stands before lower, however telling. */
  readonly first: number;
}

const counted =
  (
    code:
      "first-generation" | "thin-milk" | "unheated-milk" | "moved-while-setting" | "contamination",
  ) =>
  (batches: readonly Batch[]): SeparationCause => ({ code, batches: batches.length });

const marksOf = (context: CauseContext): readonly Mark[] => [
  { has: ({ trouble }) => trouble.length > 0, cause: counted("contamination"), first: 2 },
  { has: ({ generation }) => generation === 1, cause: counted("first-generation"), first: 1 },
  {
    has: (batch) => heldTooLong(batch, context) !== null,
    cause: (batches) => longest(batches, context),
    first: 0,
  },
  { has: ({ milk }) => milk === "thin", cause: counted("thin-milk"), first: 0 },
  { has: ({ heated }) => heated === false, cause: counted("unheated-milk"), first: 0 },
  { has: ({ moved }) => moved === true, cause: counted("moved-while-setting"), first: 0 },
  {
    has: ({ starter }) => starter !== null && starter > muchStarter,
    cause: (batches) => ({
      code: "much-starter",
      starter: Math.max(...batches.map(({ starter }) => starter ?? 0)),
      batches: batches.length,
    }),
    first: 0,
  },
];

interface HeldHours {
  readonly equivalentHours: number;
  readonly wantedHours: number;
}

/** Hours as if at the optimum, where they are more than the culture asks for; null else, or where nothing tells. */
const heldTooLong = ({ hours }: Batch, { culture, level }: CauseContext): HeldHours | null => {
  if (hours === null) return null;
  const limits = culture.growth.find((one) => asHours(one, culture.target, 1) !== null);
  const held = limits === undefined || level === null ? null : asHours(limits, level, hours);
  const wanted = limits === undefined ? null : asHours(limits, culture.target, culture.hours);
  // Without growth limits the hours themselves are compared.
  const found =
    held === null || wanted === null
      ? { equivalentHours: hours, wantedHours: culture.hours }
      : { equivalentHours: held, wantedHours: wanted };
  return found.equivalentHours > tooLong * found.wantedHours ? found : null;
};

const asHours = (limits: GrowthLimits, celsius: number, hours: number): number | null =>
  equivalentHours(limits, celsius, hours);

const longest = (batches: readonly Batch[], context: CauseContext): SeparationCause => {
  const all = batches.flatMap((batch) => heldTooLong(batch, context) ?? []);
  const most = all.reduce((a, b) => (b.equivalentHours > a.equivalentHours ? b : a));
  return { code: "held-too-long", ...most };
};
