import { celsius, hours } from "../quantity.ts";
import type { Culture, FigureSource } from "./culture.ts";

/** Figures a person gives; absent or null: as in the culture they change. degC and hours. */
export interface OwnFigures {
  readonly id?: string | null;
  readonly name?: string | null;
  readonly low?: number | null;
  readonly high?: number | null;
  readonly target?: number | null;
  readonly ceiling?: number | null;
  readonly hours?: number | null;
}

const own: FigureSource = { kind: "own" };

/**
 * A culture with some figures changed, or one's own from nothing. Each figure
 * given has the source "own", the others keep theirs; a window is own where
 * either end is. Without a base the target is the window's middle unless
 * given, and the ceiling its upper end.
 *
 * The order of the figures is not checked here: the kitchen's text is.
 *
 * @param base null for a culture of one's own
 * @returns null where there is neither a base nor an id, low, high and hours
 */
export const cultureWith = (base: Culture | null, figures: OwnFigures): Culture | null => {
  const id = figures.id ?? base?.id;
  const low = figures.low ?? base?.low;
  const high = figures.high ?? base?.high;
  const held = figures.hours ?? base?.hours;
  if (id === undefined || low === undefined || high === undefined || held === undefined)
    return null;
  return {
    id,
    name: figures.name ?? base?.name ?? id,
    low: celsius(low),
    high: celsius(high),
    target: celsius(figures.target ?? base?.target ?? (low + high) / 2),
    ceiling: celsius(figures.ceiling ?? base?.ceiling ?? high),
    hours: hours(held),
    sources: {
      window: sourceOf(base?.sources.window, figures.low, figures.high),
      target: sourceOf(base?.sources.target, figures.target),
      ceiling: sourceOf(base?.sources.ceiling, figures.ceiling),
      hours: sourceOf(base?.sources.hours, figures.hours),
    },
    growth: base?.growth ?? [],
  };
};

/** A figure neither given nor in a base was made from given ones. */
const sourceOf = (
  base: FigureSource | undefined,
  ...given: readonly (number | null | undefined)[]
): FigureSource =>
  base === undefined || given.some((one) => one !== null && one !== undefined) ? own : base;
