/** The few colours of every report, for light and dark screens, and a reader's own where they force theirs. */
export const light = `
  --paper: #fdfcf9; --raised: #f4f2ec; --ink: #1c2226; --muted: #545d63; --rule: #d9d6cd;
  --line: #17527a; --context: #6f7a80; --window: #dde8ee; --window-edge: #6d8ea3;
  --band: #945c08; --guard: rgba(148, 92, 8, 0.12); --limit: #9b2f1f;
  --holds: #17527a; --misses: #9b2f1f; --unproven: #545d63;`;

export const dark = `
  --paper: #14181b; --raised: #1d2327; --ink: #e9e6df; --muted: #a9b1b6; --rule: #343c42;
  --line: #86c4ea; --context: #8b979e; --window: #1f323d; --window-edge: #547c94;
  --band: #e0a545; --guard: rgba(224, 165, 69, 0.14); --limit: #f0907c;
  --holds: #86c4ea; --misses: #f0907c; --unproven: #b9c0c4;`;

/** A reader's own few colours, when they ask for them: the palette becomes theirs, and drawings follow. */
export const forced = `
@media (forced-colors: active) {
  :root {
    --paper: Canvas; --raised: Canvas; --ink: CanvasText; --muted: CanvasText; --rule: GrayText;
    --line: CanvasText; --context: GrayText; --window: Canvas; --window-edge: CanvasText;
    --band: Highlight; --guard: Canvas; --limit: CanvasText;
    --holds: CanvasText; --misses: CanvasText; --unproven: CanvasText;
  }
  a { color: LinkText; }
  .mark { forced-color-adjust: none; }
}`;
