/** Of a whole kitchen: what holds stands out, the rest is there to be read. */
export const kitchenStyle = `
.by-appliance { font-size: 1.08rem; }
.by-appliance > li { margin: 0 0 0.9rem; }
.by-appliance + .rows { margin-top: 2.2rem; }
.by-appliance ul { list-style: none; margin: 0.1rem 0 0; padding: 0; }
.by-appliance ul li { margin: 0 0 0.3rem; }
.appliance { font-weight: 600; }
.by-appliance ul li { color: var(--muted); }
.by-appliance .misses b, .by-appliance .unproven b { font-weight: 400; }
.by-appliance .holds { color: var(--ink); }
.unread { margin-top: 1.5rem; font-size: 0.97rem; }
.grouped tr.group th { font-weight: 600; width: auto; padding-top: 1.1rem; background: none; }
.grouped:not(.listed) { table-layout: fixed; }
.grouped:not(.listed) thead th:first-child { width: 25%; }
.grouped tbody tr:not(.group) th { width: auto; }
.when { font-weight: 400; color: var(--muted); white-space: nowrap; }
.contents { margin: 2rem 0 0; padding: 0.9rem 1.1rem 1rem; background: var(--raised); border-radius: 4px; font-size: 0.92rem; line-height: 1.45; }
.contents ul { list-style: none; padding: 0; margin: 0; max-width: none; }
.contents > ul { columns: 2; column-gap: 2.5rem; }
.contents li { margin: 0.3rem 0; break-inside: avoid; }
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
.packed { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(100%, 13.4rem), 1fr)); gap: 1.5rem 1.6rem; margin: 0.9rem 0 2.75rem; }
.packed .answer { margin: 0; padding-left: 0.9rem; font-size: 0.92rem; line-height: 1.5; }
.packed .answer.misses { padding-left: 0.65rem; }
.packed .answer ul { padding-left: 1rem; }
.packed .mark { font-size: 0.8rem; }
.packed .chance { font-size: 0.97rem; }
.packed h4 { line-height: 1.35; }`;
