/** What a form asks, as data; the keys are those of the command line's options. */

interface Asked {
  /** "pressureAt" stands for the option --pressure-at. */
  readonly key: string;
  readonly label: string;
  /** Below the label: what to write, with an example. */
  readonly hint?: string;
}

export interface Choice {
  readonly value: string;
  readonly label: string;
}

/** A line of text; with `many` several values, one on each line or with commas between them. */
export interface TextField extends Asked {
  readonly kind: "text";
  readonly many?: "lines" | "commas";
  /** A keyboard with digits first. */
  readonly numeric?: true;
}

/** One of several; `none` is what stands for no choice. */
export interface ChoiceField extends Asked {
  readonly kind: "choice";
  readonly choices: readonly Choice[];
  readonly none: string | null;
}

/** Any of several; with `joined` they are one value with commas between them. */
export interface SeveralField extends Asked {
  readonly kind: "several";
  readonly choices: readonly Choice[];
  readonly joined?: true;
}

export interface DayField extends Asked {
  readonly kind: "day";
}

export interface FlagField extends Asked {
  readonly kind: "flag";
}

export type Field = TextField | ChoiceField | SeveralField | DayField | FlagField;

/** Fields that belong together; a `folded` group is opened on demand. */
export interface FieldGroup {
  readonly title: string | null;
  readonly note?: string;
  readonly folded?: true;
  readonly fields: readonly Field[];
}

/** What stands in the form: text, the chosen ones, or a tick. */
export type Entered = Readonly<Record<string, string | readonly string[] | boolean>>;
