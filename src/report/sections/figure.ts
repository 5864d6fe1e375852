/** A chart on the page: plots are drawn once for wide screens and paper, once for phones. */
import { sizes } from "../charts/chart-theme.ts";
import type { Caption, Size } from "../charts/chart-theme.ts";
import type { Plot } from "../charts/plot.ts";
import { renderSvg } from "../charts/render-svg.ts";
import { markup, trustedMarkup } from "../markup.ts";
import type { Markup } from "../markup.ts";

interface Surround {
  readonly key: readonly Markup[];
  readonly caption: string;
}

export interface FigureParts extends Caption, Surround {
  readonly plot: (size: Size) => Plot;
}

const drawing = async (parts: FigureParts, size: Size): Promise<Markup> => {
  const svg = await renderSvg({
    id: `${parts.id}-${size.name}`,
    title: parts.title,
    description: parts.description,
    plot: parts.plot(size),
  });
  return markup`<div class="${size.name}">${trustedMarkup(svg)}</div>\n`;
};

const framed = (drawings: readonly Markup[], { key, caption }: Surround): Markup =>
  markup`<figure>
${drawings}${key.length === 0 ? null : markup`<ul class="key">${key}</ul>`}
<figcaption>${caption}</figcaption>
</figure>`;

export const figure = async (parts: FigureParts): Promise<Markup> =>
  framed(await Promise.all(sizes.map((size) => drawing(parts, size))), parts);

/** A chart that fits any width as it is. */
export const stretchedFigure = (svg: string, surround: Surround): Markup =>
  framed([trustedMarkup(svg)], surround);

/** Small samples of what the chart draws, named in words. */
const samples = {
  line: '<path d="M0 6H26" stroke="var(--line)" stroke-width="2"/>',
  bath: '<path d="M0 6H26" stroke="var(--context)" stroke-width="1.5" stroke-dasharray="6 2"/>',
  room: '<path d="M0 6H26" stroke="var(--context)" stroke-width="1.5" stroke-dasharray="2 2"/>',
  band: '<path d="M0.5 0.5H25.5V11.5H0.5Z" fill="var(--band)" fill-opacity="0.34" stroke="var(--band)"/>',
  guard:
    '<path d="M0.5 0.5H25.5V11.5H0.5Z" fill="var(--guard)" stroke="var(--band)" stroke-dasharray="3 3"/>',
  inside: '<path d="M0 0H26V12H0Z" fill="var(--line)"/>',
  below:
    '<path d="M0.7 0.7H25.3V11.3H0.7Z" fill="var(--limit)" fill-opacity="0.3" stroke="var(--limit)" stroke-width="1.4" stroke-dasharray="3 2"/>',
  above:
    '<path d="M0.7 0.7H25.3V11.3H0.7Z" fill="var(--limit)" fill-opacity="0.3" stroke="var(--limit)" stroke-width="1.4"/>',
} as const;

export const keyEntry = (sample: keyof typeof samples, words: string): Markup =>
  markup`<li>${trustedMarkup(
    `<svg viewBox="0 0 26 12" aria-hidden="true" focusable="false" fill="none">${samples[sample]}</svg>`,
  )}<span>${words}</span></li>\n`;
