import { markup } from "../markup.ts";
import type { Markup } from "../markup.ts";
import { cautions } from "../wording/cautions.ts";

export const cautionsSection = (): Markup => markup`
<section aria-labelledby="cautions">
<h2 id="cautions">Before you culture</h2>
<dl class="cautions">
${cautions.map(({ title, text }) => markup`<div><dt>${title}</dt><dd>${text}</dd></div>\n`)}</dl>
</section>`;
