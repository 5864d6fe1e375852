/** Advice: what to use, what to change, what to test next. */
export const adviceStyle = `
.advice { list-style: none; padding: 0; margin: 0.5rem 0 1.75rem; max-width: none; }
.advice li { margin: 0; padding: 0.6rem 0 0.65rem; border-top: 1px solid var(--rule); display: grid; grid-template-columns: 6.4rem 1fr; gap: 0 0.9rem; align-items: baseline; break-inside: avoid; }
.advice .mark { justify-self: start; font-size: 0.76rem; padding: 0.1em 0.5em 0.14em; }
.advice .holds .mark { background: var(--holds); border-color: var(--holds); color: var(--paper); }
/* What was not tested is never as solid as what holds. */
.advice .holds.predicted .mark { background: none; color: var(--holds); }
.advice .misses .mark { color: var(--misses); border-style: double; border-width: 3px; }
.advice .unproven .mark { color: var(--unproven); border-style: dashed; }
.advice b { font-weight: 600; }
.advice .said { grid-column: 2; max-width: 37rem; }
.advice .misses .said { color: var(--muted); }
.worth { display: block; margin-top: 0.35rem; color: var(--muted); }
.note .worth { font-size: 0.94em; }`;

export const advicePhone = `
  .advice li { grid-template-columns: auto 1fr; gap: 0.25rem 0.7rem; }
  .advice .said { grid-column: 1 / -1; }`;
