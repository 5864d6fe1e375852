/** What a session needs of a terminal, so that it is tested without one. */
export interface Prompter {
  /** The next line typed; null where the person stopped (Ctrl-C, Ctrl-D, the terminal gone). */
  readonly line: (prompt: string) => Promise<string | null>;
  /** Plain text. */
  readonly say: (text: string) => void;
  /** Something understood: quieter than what was typed. */
  readonly echo: (text: string) => void;
  /** Something refused or asked about. */
  readonly warn: (text: string) => void;
  readonly close: () => void;
}
