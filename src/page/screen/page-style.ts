/** The page's own style, after the report's, whose colours and type it uses. */

const frame = `
.page .masthead { margin-bottom: 1.5rem; }
.brand { font-size: 1.35rem; font-weight: 700; letter-spacing: -0.01em; margin: 0; }
.masthead .small { margin: 0 0 0.9rem; }
.masthead nav { display: flex; flex-wrap: wrap; gap: 0 1.4rem; border-bottom: 1px solid var(--rule); }
.page :is(button, input, select, textarea, label, legend, .hint, .told, .mistake, .working, .brand, summary) {
  font-family: system-ui, -apple-system, "Segoe UI", Roboto, "Helvetica Neue", Arial, "Liberation Sans", sans-serif;
}
button.tab {
  background: none; border: 0; border-bottom: 3px solid transparent; border-radius: 0; color: var(--muted);
  font-size: 1rem; min-height: 2.75rem; padding: 0.4rem 0.1rem; margin-bottom: -1px; cursor: pointer;
}
button.tab[aria-current] { color: var(--ink); border-bottom-color: var(--line); font-weight: 600; }
.page h1 { font-size: 1.75rem; margin-top: 0.5rem; }
.intro { margin-top: 0.6rem; }
.page :focus-visible { outline: 3px solid var(--line); outline-offset: 2px; }
.page :is(h1, h2, main):focus { outline: none; }
.page footer details { margin-top: 0.6rem; }
.licences { white-space: pre-wrap; overflow-wrap: anywhere; max-height: 24rem; overflow: auto; font-size: 0.75rem; }`;

const forms = `
.form { margin: 1.25rem 0 0; max-width: 44rem; }
.fields { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(100%, 17rem), 1fr)); gap: 1rem 1.5rem; align-items: end; }
fieldset.group, details.group { border: 0; border-top: 1px solid var(--rule); margin: 1.4rem 0 0; padding: 1rem 0 0; min-width: 0; }
fieldset.group > legend { font-weight: 600; font-size: 1.02rem; padding: 0; float: left; width: 100%; margin-bottom: 0.7rem; }
fieldset.group > legend + * { clear: both; }
details.group > summary { font-size: 1rem; font-weight: 600; color: var(--ink); padding: 0; }
details.group > .fields { margin-top: 0.9rem; }
.field { min-width: 0; border: 0; margin: 0; padding: 0; }
.field > label, .field > legend, .drop > label { display: block; font-size: 0.95rem; font-weight: 600; padding: 0; margin: 0 0 0.2rem; }
.hint { font-size: 0.85rem; line-height: 1.45; color: var(--muted); margin: 0 0 0.35rem; }
.field :is(input:not([type="checkbox"]), select, textarea) {
  width: 100%; font-size: 1rem; line-height: 1.35; min-height: 2.75rem; padding: 0.5rem 0.6rem; color: var(--ink); background: var(--raised);
  border: 1px solid var(--muted); border-radius: 4px;
}
.field textarea { font-family: ui-monospace, "SF Mono", Menlo, Consolas, "Liberation Mono", monospace; resize: vertical; }
.field textarea.code { font-size: 0.85rem; white-space: pre; overflow: auto; }
[aria-invalid="true"] { border: 2px solid var(--limit) !important; }
.several { grid-column: 1 / -1; }
.ticks { display: flex; flex-wrap: wrap; gap: 0.2rem 1.4rem; }
.tick { display: inline-flex; align-items: center; gap: 0.5rem; min-height: 2.75rem; font-size: 1rem; cursor: pointer; }
.tick input { width: 1.2rem; height: 1.2rem; margin: 0; accent-color: var(--line); flex: none; }
.mistake { color: var(--limit); font-size: 0.95rem; line-height: 1.45; font-weight: 600; margin: 0.4rem 0 0; padding-left: 0.7rem; border-left: 4px solid var(--limit); overflow-wrap: anywhere; }
.mistake.lines { white-space: pre-wrap; font-weight: 400; }
.drop { border: 2px dashed var(--muted); border-radius: 6px; padding: 1rem 1.1rem; margin-top: 0.4rem; }
.drop.over { border-color: var(--line); background: var(--raised); }
.drop input[type="file"] { font-size: 1rem; max-width: 100%; min-height: 2.75rem; color: var(--ink); }
.chosen { list-style: none; padding: 0; margin: 0.6rem 0 0; }
kbd { font-family: ui-monospace, "SF Mono", Menlo, Consolas, "Liberation Mono", monospace; font-size: 0.95em; background: var(--raised); padding: 0.05em 0.35em; border-radius: 3px; white-space: nowrap; }`;

const buttons = `
.buttons { display: flex; flex-wrap: wrap; gap: 0.6rem; margin: 1.2rem 0; }
.page button:not(.tab) {
  font-size: 0.98rem; line-height: 1.3; min-height: 2.75rem; padding: 0.5rem 1rem; border: 1px solid var(--muted); border-radius: 4px;
  background: var(--paper); color: var(--ink); cursor: pointer;
}
.page button.main { background: var(--line); border-color: var(--line); color: var(--paper); font-weight: 600; }
.page button.grave { border: 2px solid var(--limit); color: var(--limit); font-weight: 600; }
.page button:disabled { opacity: 0.55; cursor: default; }
.small-buttons { margin: 0.4rem 0 0; gap: 0.5rem; }
.page .small-buttons button { font-size: 0.88rem; padding: 0.3rem 0.8rem; min-height: 2.5rem; }`;

const rest = `
.told:not(:empty) { background: var(--raised); border-left: 4px solid var(--line); padding: 0.7rem 1rem; margin: 0 0 1.25rem; max-width: 44rem; font-size: 0.98rem; }
.told p { margin: 0 0 0.4rem; }
.told p:last-child { margin: 0; }
.working { position: sticky; top: 0; z-index: 2; display: flex; flex-wrap: wrap; align-items: center; gap: 0.5rem 1rem; background: var(--paper); border-bottom: 1px solid var(--rule); padding: 0.5rem 0; margin-bottom: 1rem; font-size: 0.95rem; }
.working progress { flex: 1 1 10rem; accent-color: var(--line); }
.entries { margin-top: 0.5rem; }
.plain-list { list-style: none; padding: 0; max-width: none; }
.plain-list > li { padding: 0.7rem 0; border-bottom: 1px solid var(--rule); margin: 0; }
.plain-list > li { display: grid; grid-template-columns: minmax(0, 1fr) auto; gap: 0.3rem 1.5rem; align-items: start; }
.plain-list > li > :is(.form, .mistake) { grid-column: 1 / -1; }
.plain-list > li > .small-buttons { margin: 0; }
.entry { margin: 0; max-width: 40rem; }
.entry .small { display: block; }
.form > .fields + .fields, .form > fieldset + .fields { margin-top: 1rem; }
.result { margin-top: 2.5rem; border-top: 3px solid var(--line); }
.shown-report > h2 { border: 0; margin-top: 1rem; padding-top: 0; font-size: 1.75rem; }`;

const print = `
@media print {
  .masthead, .form, .buttons, .told, .working, .intro { display: none !important; }
  .result { border: 0; margin: 0; }
}`;

const phone = `
@media screen and (max-width: 560px) {
  .masthead nav { gap: 0 1rem; justify-content: space-between; }
  button.tab { font-size: 0.95rem; }
  .plain-list > li { display: block; }
  .plain-list > li > .small-buttons { margin: 0.4rem 0 0; }
}`;

const forced = `
@media (forced-colors: active) {
  button.tab[aria-current] { border-bottom-color: Highlight; }
  .drop { border-color: CanvasText; }
}`;

export const pageStyle = [frame, forms, buttons, rest, phone, print, forced].join("\n");
