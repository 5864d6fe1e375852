/** Answers in rows, a mark before each: at the head of a kitchen's report, and the advice below it. */
export const adviceStyle = `
.advice, .by-appliance, .by-appliance ul { list-style: none; padding: 0; max-width: none; }
.advice { margin: 0.5rem 0 1.75rem; }
.by-appliance ul { margin: 0; }
.advice li, .by-appliance ul li { display: grid; grid-template-columns: 6.4rem 1fr; gap: 0 0.9rem; align-items: baseline; break-inside: avoid; }
.advice li { margin: 0; padding: 0.6rem 0 0.65rem; border-top: 1px solid var(--rule); }
.by-appliance ul li { margin: 0.3rem 0; line-height: 1.45; }
:is(.advice, .by-appliance) .mark { justify-self: start; font-size: 0.76rem; padding: 0.1em 0.5em 0.14em; }
:is(.advice, .by-appliance) .holds .mark { background: var(--holds); border-color: var(--holds); color: var(--paper); }
/* What was not tested is never as solid as what holds. */
:is(.advice, .by-appliance) .holds.predicted .mark { background: none; color: var(--holds); }
:is(.advice, .by-appliance) .misses .mark { color: var(--misses); border-style: double; border-width: 3px; }
:is(.advice, .by-appliance) .unproven .mark { color: var(--unproven); border-style: dashed; }
.advice b { font-weight: 600; }
.advice .said { grid-column: 2; max-width: 37rem; }
.advice .misses .said { color: var(--muted); }
.worth { display: block; margin-top: 0.35rem; color: var(--muted); }
.note .worth { font-size: 0.94em; }`;

export const advicePhone = `
  .advice li { grid-template-columns: auto 1fr; gap: 0.25rem 0.7rem; }
  .advice .said { grid-column: 1 / -1; }
  .by-appliance ul li { display: block; margin: 0.4rem 0; }
  .by-appliance .mark { margin-right: 0.3rem; }
  .by-appliance ul .rest { padding-left: 0; }`;
