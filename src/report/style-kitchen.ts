/** Of a whole kitchen: what holds stands out, the rest is there to be read. */
export const kitchenStyle = `
.pairing { font-size: 1.12rem; line-height: 1.5; margin: 1.5rem 0 0; max-width: none; }
.by-appliance { margin: 1.3rem 0 0.6rem; }
.by-appliance > li { margin: 0; padding: 0.7rem 0 0.65rem; border-top: 1px solid var(--rule); }
.by-appliance > li:last-child { border-bottom: 1px solid var(--rule); }
.by-appliance h3 { margin: 0 0 0.2rem; font-size: 1.06rem; }
.by-appliance ul .rest { display: block; padding-left: 7.3rem; color: var(--muted); font-size: 0.94rem; }
.by-appliance ul .rest:only-child { padding-left: 0; }
.next-step { margin-bottom: 0; }
.unread { margin-top: 1.5rem; font-size: 0.97rem; }
.grouped tr.group th { font-weight: 600; width: auto; padding-top: 1.1rem; background: none; }
.grouped:not(.listed) { table-layout: fixed; }
.grouped:not(.listed) thead th:first-child { width: 25%; }
.grouped tbody tr:not(.group) th { width: auto; }
.when { font-weight: 400; color: var(--muted); white-space: nowrap; }
.contents { margin: 2rem 0 0; padding: 0.9rem 1.1rem 1rem; background: var(--raised); border-radius: 4px; font-size: 0.92rem; line-height: 1.45; }
.contents ul { list-style: none; padding: 0; margin: 0; max-width: none; }
.contents > ul { columns: 2; column-gap: 2.5rem; }
.contents li { margin: 0.3rem 0; }
.contents li li, .contents li:not(:has(ul)) { break-inside: avoid; }
.contents ul ul { padding-left: 0.9rem; border-left: 2px solid var(--rule); margin: 0.2rem 0 0.4rem; }
.contents a { text-decoration: none; }
.contents a:hover, .contents a:focus { text-decoration: underline; }
.contents > ul > li:first-child { margin-top: 0; }
.contents .when { color: inherit; }
.day { white-space: nowrap; }
.probes { list-style: none; padding: 0; margin: -0.3rem 0 0; }
.rows tbody th { color: var(--ink); }
/* Figures keep whole; names may break. */
.rows td { overflow-wrap: break-word; }
.rows .asked { margin-top: 0.1rem; }
.rows .column { display: none; }
.run { display: block; }
.packed { margin: 0.6rem 0 2.25rem; }
.packed .answer { margin: 0; padding: 0.75rem 0 0.8rem; border: 0; border-top: 1px solid var(--rule); display: grid; grid-template-columns: 8.4rem 1fr; gap: 0 0.9rem; font-size: 0.97rem; line-height: 1.5; }
.packed .answer > * { grid-column: 2; }
.packed .answer .verdict { grid-column: 1; grid-row: 1 / span 4; display: block; margin: 0; }
.packed .answer ul { padding-left: 1rem; margin: 0; }
.packed .answer h4 { line-height: 1.35; margin: 0 0 0.2rem; }
.packed .mark { font-size: 0.8rem; }
.packed .chance { display: block; font-size: 0.9rem; margin-top: 0.3rem; }
.packed .organisms { display: inline; }
.packed .do { margin-top: 0.4rem; }
.packed .do strong { display: inline; margin-right: 0.3rem; }`;

export const kitchenPhone = `
  .packed .answer, .packed .answer.misses { display: block; padding-left: 0; }
  .packed .answer .verdict { display: flex; margin-bottom: 0.3rem; }
  .packed .organisms { display: block; }
  .pairing { font-size: 1.05rem; }`;
