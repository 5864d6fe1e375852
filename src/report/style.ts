/**
 * The report's one style sheet. Colours are few and dark enough to read
 * (4.5 : 1 and more on their ground, in both schemes); everything a colour says
 * is also said by a word, a dash or a border, for colour blindness and grey print.
 */
import { advicePhone, adviceStyle } from "./style-advice.ts";
import { kitchenPhone, kitchenStyle } from "./style-kitchen.ts";
import { dark, forced, light } from "./style-palette.ts";
import { print } from "./style-print.ts";
import { recheckStyle } from "./style-recheck.ts";

const page = `
:root { color-scheme: light dark; ${light} }
@media (prefers-color-scheme: dark) { :root { ${dark} } }
* { box-sizing: border-box; }
html { -webkit-text-size-adjust: 100%; }
body {
  margin: 0; background: var(--paper); color: var(--ink);
  font: 1.0625rem/1.6 Charter, "Bitstream Charter", "Iowan Old Style", "Palatino Linotype", Palatino, Georgia, "Liberation Serif", serif;
}
svg text, .plain, table, .key, .mark, .small, figcaption {
  font-family: system-ui, -apple-system, "Segoe UI", Roboto, "Helvetica Neue", Arial, "Liberation Sans", sans-serif;
}
.sheet { max-width: 46.5rem; margin: 0 auto; padding: 2.5rem 1.25rem 4rem; }
.skip { position: absolute; left: -999rem; }
.skip:focus { left: 1rem; top: 1rem; background: var(--paper); padding: 0.5rem 0.75rem; z-index: 1; }
a { color: var(--line); }
h1, h2, h3, h4 { line-height: 1.22; text-wrap: balance; margin: 0; font-weight: 600; overflow-wrap: anywhere; }
h1 { font-size: 2.1rem; letter-spacing: -0.012em; }
h2 { font-size: 1.45rem; margin: 3.5rem 0 0.75rem; padding-top: 1.1rem; border-top: 1px solid var(--rule); }
h3 { font-size: 1.12rem; margin: 2rem 0 0.4rem; }
p { margin: 0 0 0.8rem; max-width: 40rem; overflow-wrap: anywhere; }
.small { font-size: 0.85rem; line-height: 1.5; color: var(--muted); }
.byline { margin-top: 0.5rem; }
ul, ol { margin: 0.4rem 0 1rem; padding-left: 1.25rem; max-width: 40rem; overflow-wrap: anywhere; }
li { margin: 0.2rem 0; }
caption, summary, figcaption, dt, dd { overflow-wrap: anywhere; }
li::marker { color: var(--muted); }`;

const answers = `
.answer { margin: 2rem 0 0; padding: 0 0 0 1.25rem; border-left: 4px solid var(--unproven); break-inside: avoid; }
.answer.holds { border-left-color: var(--holds); }
.answer.misses { border-left: 8px double var(--misses); padding-left: 1rem; }
.answer.unproven { border-left-style: dashed; }
.answer .verdict { display: flex; flex-wrap: wrap; align-items: baseline; gap: 0.35rem 0.9rem; margin: 0 0 0.5rem; }
.mark {
  display: inline-block; padding: 0.22em 0.7em 0.26em; font-size: 0.95rem; font-weight: 700; letter-spacing: 0.07em;
  text-transform: uppercase; line-height: 1.3; border: 2px solid currentColor; border-radius: 3px;
}
.holds > .verdict .mark { background: var(--holds); border-color: var(--holds); color: var(--paper); }
.misses > .verdict .mark { color: var(--misses); border-style: double; border-width: 4px; }
.unproven > .verdict .mark { color: var(--unproven); border-style: dashed; }
.chance { font-weight: 400; font-size: 1.12rem; }
.answer h2 { border: 0; margin: 0 0 0.5rem; padding: 0; font-size: 1.32rem; line-height: 1.36; text-wrap: pretty; }
.answer .where { margin: 0 0 0.15rem; }
.answer h3 { margin: 0 0 0.5rem; }
.answer h4 { margin: 0 0 0.5rem; font-size: 1.02rem; }
.organisms { display: block; font-weight: 400; font-size: 0.9em; color: var(--muted); }
.cards { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(100%, 19rem), 1fr)); gap: 1.25rem 1.75rem; margin-top: 0.75rem; }
.cards .answer { margin: 0; font-size: 0.97rem; line-height: 1.5; }
.cards .mark { font-size: 0.85rem; }
.cards .chance { font-size: 1rem; }
.lead { list-style: none; padding: 0; margin: 1.75rem 0 0; max-width: none; font-size: 1.2rem; line-height: 1.45; }
.lead li { margin: 0 0 0.7rem; }
.who { color: var(--muted); }
.matrix { margin-top: 1.75rem; }
.matrix .mark { font-size: 0.78rem; padding: 0.1em 0.5em 0.14em; }
.matrix .holds .mark { background: var(--holds); border-color: var(--holds); color: var(--paper); }
.matrix .misses .mark { color: var(--misses); border-style: double; border-width: 3px; }
.matrix .unproven .mark { color: var(--unproven); border-style: dashed; }
.odds { white-space: nowrap; font-weight: 600; }
.asked, .gist { display: block; font-weight: 400; color: var(--muted); font-size: 0.94em; }
.matrix tbody th { color: var(--ink); width: 26%; }
.matrix .none { color: var(--muted); }
.matrix .column { display: none; }
.do { margin-top: 0.9rem; }
.do strong { display: block; font-size: 0.85rem; letter-spacing: 0.02em; }`;

const figures = `
figure { margin: 1.5rem 0 1.75rem; break-inside: avoid; }
figcaption { font-size: 0.85rem; line-height: 1.5; color: var(--muted); margin-top: 0.6rem; max-width: 40rem; }
figure svg { display: block; width: 100%; }
figure svg[viewBox] { height: auto; }
/* A halo lies behind its letters, not over them. */
svg text { paint-order: stroke; stroke-linejoin: round; }
.narrow { display: none; }
.key { display: flex; flex-wrap: wrap; gap: 0.3rem 1.2rem; margin: 0.5rem 0 0; padding: 0; list-style: none; font-size: 0.85rem; line-height: 1.45; max-width: none; }
.key li { display: flex; align-items: center; gap: 0.5rem; margin: 0; overflow-wrap: anywhere; }
figure .key svg { flex: none; width: 26px; height: 12px; display: inline-block; }
table { border-collapse: collapse; width: 100%; margin: 0.75rem 0 1.5rem; font-size: 0.92rem; line-height: 1.45; font-variant-numeric: tabular-nums lining-nums; }
caption { text-align: left; font-weight: 600; padding-bottom: 0.35rem; }
th, td { text-align: left; vertical-align: top; padding: 0.42rem 1rem 0.42rem 0; border-bottom: 1px solid var(--rule); overflow-wrap: anywhere; }
th:last-child, td:last-child { padding-right: 0; }
th { font-weight: 400; color: var(--muted); }
thead th { font-weight: 600; color: var(--ink); }
table.pairs th { width: 44%; }
td.number, th.number { text-align: right; white-space: nowrap; }
dl.cautions { margin: 0; max-width: 40rem; }
dl.cautions dt { font-weight: 600; margin-top: 1rem; }
dl.cautions dd { margin: 0.1rem 0 0; }
.hash { font-family: ui-monospace, "SF Mono", Menlo, Consolas, "Liberation Mono", monospace; font-size: 0.82em; overflow-wrap: anywhere; }
.note { background: var(--raised); padding: 0.8rem 1rem; border-radius: 4px; max-width: 40rem; }
.note > :last-child { margin-bottom: 0; }
footer { margin-top: 3.5rem; padding-top: 1rem; border-top: 1px solid var(--rule); }`;

/**
 * A wide table as a list: each row's name, then its cells, each under its
 * column's name. `heads` are the parts of its head that this makes needless.
 */
const listed = (table: string, heads: string): string => `
  ${table}, ${table} caption:not(.heard), ${table} tbody, ${table} tr, ${table} th, ${table} td { display: block; width: auto; padding: 0; border: 0; }
  ${heads} { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
  ${table} tbody tr { border-top: 1px solid var(--rule); padding: 0.6rem 0 0.2rem; display: grid; grid-template-columns: repeat(auto-fill, minmax(9rem, 1fr)); gap: 0 1rem; }
  ${table} tbody th { font-weight: 600; width: auto; grid-column: 1 / -1; }
  ${table} td { padding: 0.35rem 0 0.45rem; }
  ${table} .column { display: block; }
  ${table} td.none { display: none; }`;

/** Its cultures with what they ask, once, above the list. */
const asked = (table: string): string => `
  ${table} thead, ${table} thead tr { display: block; }
  ${table} thead th { padding: 0.15rem 0; }
  ${table} thead .asked { display: inline; margin-left: 0.6em; }`;

const folded = `
.heard { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
details { margin: 0 0 1rem; }
summary { cursor: pointer; color: var(--line); font-size: 0.92rem; font-family: system-ui, -apple-system, "Segoe UI", Roboto, "Helvetica Neue", Arial, "Liberation Sans", sans-serif; padding: 0.3rem 0; width: fit-content; }
${listed(".matrix.listed", ".matrix.listed thead th:first-child")}
${asked(".matrix.listed")}`;

const phone = `
@media screen and (max-width: 560px) {
  .sheet { padding: 1.5rem 1rem 3rem; }
  h1 { font-size: 1.65rem; }
  h2 { font-size: 1.3rem; margin-top: 2.75rem; }
  .answer, .answer.misses { padding-left: 0.9rem; }
  .answer h2 { font-size: 1.15rem; }
  .wide { display: none; }
  .narrow { display: block; }
  table.pairs, table.pairs caption:not(.heard), table.pairs tbody, table.pairs tr, table.pairs th, table.pairs td { display: block; width: 100%; }
  table.pairs th { border: 0; padding: 0.5rem 0 0; }
  table.pairs td { padding: 0 0 0.5rem; }
  th, td { padding-right: 0.6rem; }
  .lead { font-size: 1.08rem; }
${listed(".matrix", ".matrix thead th:first-child")}
${asked(".matrix")}
${listed(".rows", ".rows thead")}
  .rows .column { color: var(--muted); font-size: 0.94em; }
  .grouped tbody tr.group { border-top: 2px solid var(--rule); padding-top: 0.9rem; margin-top: 0.6rem; }
  .grouped tbody tr.group + tr { border-top: 0; }
  .grouped tr.group th { padding-top: 0; font-size: 1.02rem; }
  .contents > ul { columns: 1; }
${advicePhone}
${kitchenPhone}
}`;

const own = [page, answers, kitchenStyle, adviceStyle, recheckStyle, figures];
export const style = [...own, folded, phone, forced, print].join("\n");

/** For the policy's `style-src`: this very sheet and no other. */
export const styleHash = async (): Promise<string> => {
  const bytes = new TextEncoder().encode(style);
  const digest = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
  return `sha256-${btoa(String.fromCharCode(...digest))}`;
};
