/** Rechecks: the word before its sentence, and causes in their order. */
export const recheckStyle = `
.rechecked .mark { font-size: 0.8rem; padding: 0.1em 0.5em 0.14em; margin-right: 0.35rem; }
.rechecked.holds .mark { background: var(--holds); border-color: var(--holds); color: var(--paper); }
.rechecked.misses .mark { color: var(--misses); border-style: double; border-width: 3px; }
.rechecked.unproven .mark { color: var(--unproven); border-style: dashed; }
.causes li { margin: 0 0 0.55rem; break-inside: avoid; }
.causes b { font-weight: 600; }
.due { margin-top: 1rem; }`;
