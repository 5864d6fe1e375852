/**
 * What the screen asks of its worker, and what comes back. All of it crosses
 * between two threads, so it is plain data; the screen shows it and computes
 * nothing.
 */
import type { Culture } from "../culture/culture.ts";
import type { Kitchen } from "../kitchen/kitchen.ts";
import type { Outcome } from "../problem.ts";

/** The same as the command line's: every value of each option in order, flags as true. */
export type FormValues = Readonly<Record<string, readonly string[] | boolean>>;

/** A file of a logger, as chosen or dropped; `name` is its name without folders. */
export interface ChosenFile {
  readonly name: string;
  readonly content: Blob;
}

/** Readings of one test: files, or lines typed by hand such as "22:30 41.2". */
export type Readings =
  | { readonly kind: "files"; readonly files: readonly ChosenFile[] }
  | { readonly kind: "typed"; readonly lines: string };

export type EditedSection = "thermometer" | "appliance" | "container" | "culture" | "batch";
export type NamedSection = Exclude<EditedSection, "batch"> | "test";

/** A report to show in the page's own document: `main` and `byline` are markup, the others plain text. */
export interface ShownReport {
  readonly title: string;
  readonly heading: string;
  readonly byline: string;
  readonly main: string;
  /** The answer in one plain sentence, to be read out. */
  readonly summary: string;
}

/** The kitchen as the page holds it. */
export interface KitchenState {
  readonly kitchen: Kitchen;
  /** kitchen.yaml. */
  readonly text: string;
  /** Entries as they are written in kitchen.yaml, by section (its plural) and id; batches by their number. */
  readonly written: Readonly<Record<string, Readonly<Record<string, WrittenEntry>>>>;
  /** Readings that are listed and not here: they must be opened too before their tests count. */
  readonly missing: readonly { readonly test: string; readonly path: string }[];
  /** Cultures one can choose from without entering them. */
  readonly catalogue: readonly Culture[];
  /** ISO day by this computer's clock. */
  readonly today: string;
  readonly version: string;
  /** Why the browser keeps nothing between visits; null where it does. */
  readonly notKept: string | null;
  /** Whether a kitchen was kept or opened: false for a fresh one with nothing in it. */
  readonly started: boolean;
}

export type WrittenEntry = Readonly<Record<string, unknown>>;

/** A changed kitchen, and sentences about it: what was taken from before, what to throw away, which test is due. */
export interface Changed {
  readonly state: KitchenState;
  readonly remarks: readonly string[];
}

/** What a file to save is called and holds. */
export interface SavedFile {
  readonly name: string;
  readonly content: Blob;
}

export type FileToSave =
  | "night-report"
  | "night-data"
  | "night-readings"
  | "kitchen-report"
  | "kitchen-data"
  | "kitchen-yaml"
  | "kitchen-zip";

/** Everything that can be asked: what goes in, what comes out. */
export interface Requests {
  /** What was kept from the last visit; else a fresh kitchen. */
  start: { asked: null; answer: KitchenState };
  /** One night by itself, as the command `check` (typed readings with the options of `enter`). */
  check: {
    asked: { readings: Readings; options: FormValues };
    answer: ShownReport;
  };
  /** As the command of that name with these words and options. */
  edit: {
    asked: { section: EditedSection; words: readonly string[]; options: FormValues };
    answer: Changed;
  };
  remove: { asked: { section: NamedSection; id: string }; answer: Changed };
  /** As the commands `add` and `enter`: a water test into the kitchen, and what its night says. */
  add: {
    asked: { readings: Readings; options: FormValues };
    answer: Changed & { readonly id: string; readonly night: ShownReport };
  };
  /** As the command `report`. */
  report: { asked: null; answer: ShownReport };
  save: { asked: { what: FileToSave }; answer: SavedFile };
  /** kitchen.yaml, a zipped kitchen folder, or files of readings that the kitchen lists; names may hold folders. */
  open: { asked: { files: readonly ChosenFile[] }; answer: Changed };
  /** Forgets the kitchen here and in the browser. */
  erase: { asked: null; answer: Changed };
}

export type RequestName = keyof Requests;

/** Screen to worker; `id` comes back with the answer. */
export type Asked = {
  [Name in RequestName]: {
    readonly id: number;
    readonly name: Name;
    readonly asked: Requests[Name]["asked"];
  };
}[RequestName];

/** How far a long reading is, bytes. */
export interface Progress {
  readonly id: number;
  readonly kind: "progress";
  readonly read: number;
  /** 0 where it is not known. */
  readonly total: number;
}

export interface Answered {
  readonly id: number;
  readonly kind: "answer";
  readonly outcome: Outcome<unknown>;
}

export type FromWorker = Progress | Answered;
