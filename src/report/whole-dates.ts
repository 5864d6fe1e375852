import { markup } from "./markup.ts";
import type { Markup } from "./markup.ts";

const dates = /(?<![\w-])(\d{4}-\d\d-\d\d)(?![\w-])/;

/** Text whose dates, such as 2026-03-14, are not parted at a line's end; names that hold one may be. */
export const wholeDates = (text: string): readonly Markup[] =>
  text
    .split(dates)
    .map((part, at) => (at % 2 === 0 ? markup`${part}` : markup`<span class="day">${part}</span>`));
