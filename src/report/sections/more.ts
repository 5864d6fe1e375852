/** What few readers need, folded away; works without a script, and paper shows it (style.ts). */
import { markup } from "../markup.ts";
import type { Markup } from "../markup.ts";

export const more = (summary: string, content: Markup): Markup =>
  markup`<details><summary>${summary}</summary>
${content}
</details>`;
