/** How a culture is called: in full, in a few words, and as a mark in a chart. */
import type { Requirement } from "../../culture/verdict-types.ts";

const typedWindow = "your window";

/** The catalogue's name in full, or "your window" for one typed by hand. */
export const cultureName = ({ name }: Requirement): string => (name === "" ? typedWindow : name);

/** The same without what stands in brackets: "Low long-hold milk culture". */
export const shortCultureName = (requirement: Requirement): string =>
  cultureName(requirement).replace(/\s*\([^()]*\)$/, "") || cultureName(requirement);

/** The id, for places with room for one word: what one types after --culture. */
export const windowMark = ({ name, culture }: Requirement): string =>
  name === "" ? "window" : culture;
