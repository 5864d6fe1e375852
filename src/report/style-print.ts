/** The report on paper: light, all of it unfolded, nothing torn that fits a sheet. */
import { light } from "./style-palette.ts";

export const print = `
@media print {
  :root { color-scheme: light; ${light} }
  @page { margin: 16mm 15mm; }
  html { font-size: 9.8pt; }
  body { font-size: 1rem; line-height: 1.45; background: none; }
  .sheet { max-width: none; padding: 0; }
  .skip { display: none; }
  h1, h2, h3, h4, caption, summary { break-after: avoid; }
  h1 { font-size: 1.9rem; }
  h2 { margin-top: 1.8rem; padding-top: 0.8rem; }
  h3 { margin-top: 1.3rem; }
  figure { margin: 0.8rem 0 1rem; }
  table { margin: 0.5rem 0 0.9rem; }
  th, td { padding-top: 0.26rem; padding-bottom: 0.26rem; }
  .advice { margin-bottom: 1rem; }
  .advice li, .packed .answer { padding-top: 0.4rem; padding-bottom: 0.4rem; }
  .packed { margin-bottom: 1.3rem; }
  details { margin-bottom: 0.6rem; }
  /* What is taller than a sheet breaks all the same. */
  figure, table, tr, details, .answer, dl.cautions div, .note, .byline, .probes, .by-appliance > li { break-inside: avoid; }
  details:has(table ~ table) { break-inside: auto; }
  .where, .probes, h2 + .byline, tr.group, thead { break-after: avoid; }
  a { color: inherit; }
  .contents { display: none; }
  details { display: block; }
  details::details-content { display: block; content-visibility: visible; block-size: auto; }
  summary { color: var(--ink); font-weight: 600; list-style: none; }
  summary::-webkit-details-marker { display: none; }
  svg, .mark, .note { print-color-adjust: exact; -webkit-print-color-adjust: exact; }
  p { orphans: 3; widows: 3; }
}`;
