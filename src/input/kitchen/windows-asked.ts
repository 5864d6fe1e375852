/** The windows a thermometer is to be judged for. */
import { findCulture } from "../../culture/catalogue.ts";
import type { Kitchen } from "../../kitchen/kitchen.ts";
import { done } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import type { ThermometerOptions } from "./thermometer-options.ts";

/** Temperatures in degC. */
export interface NamedWindow {
  /** null for one typed by hand. */
  readonly name: string | null;
  readonly low: number;
  readonly high: number;
}

/** Typed, and of cultures: the kitchen's figures before the catalogue's. Fails with "culture-unknown". */
export const windowsAsked = (
  { window, culture }: ThermometerOptions,
  kitchen: Kitchen | null,
): Outcome<readonly NamedWindow[]> => {
  const windows: NamedWindow[] = [];
  if (window !== undefined) {
    windows.push({ name: null, low: window.low.celsius, high: window.high.celsius });
  }
  for (const id of new Set(culture)) {
    const own = kitchen?.cultures.find((one) => one.id === id);
    const found = own === undefined ? findCulture(id) : done(own);
    if (!found.ok) return found;
    windows.push({ name: found.value.name, low: found.value.low, high: found.value.high });
  }
  return done(windows);
};
