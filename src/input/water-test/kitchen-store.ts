/** What keeps a kitchen, as much of it as a new water test needs: a folder on disk, or a page's memory. */
import type { HashedSource } from "../../analysis-types.ts";
import type { Kitchen } from "../../kitchen/kitchen.ts";
import { parseKitchen } from "../../kitchen/parse-kitchen.ts";
import { done } from "../../problem.ts";
import type { Outcome, Problem } from "../../problem.ts";
import type { NewTestFile } from "./new-test.ts";

/** A file's bytes, to be read once. */
export interface OpenedSource extends HashedSource {
  /** How many there are. */
  readonly bytes: number;
  /** Why reading broke off, if it did. */
  readonly broken: () => Problem | null;
}

/** A file that was copied into the kitchen. */
export interface KeptRaw {
  /** Inside the kitchen, with forward slashes: "readings/night.csv". */
  readonly path: string;
  readonly sha256: string;
}

/** `Source`: where the bytes of a new file come from. `Raw`: what the store knows of a copy. */
export interface KitchenStore<Source, Raw extends KeptRaw = KeptRaw> {
  /** The kitchen's text, and what sentences call its file. */
  readonly read: () => Promise<Outcome<{ readonly file: string; readonly text: string }>>;
  /** Whole or not at all, on the newest text; where the edit fails, nothing is written. */
  readonly update: (edit: (text: string) => Outcome<string>) => Promise<Outcome<void>>;
  /** `onBytes` is told of bytes as they are read. Asked again, it reads again from the start. */
  readonly openSource: (
    file: NewTestFile<Source>,
    onBytes: (count: number) => void,
  ) => Promise<Outcome<OpenedSource>>;
  /** A copy of the file as it is, under a name that is free or has these very bytes. */
  readonly keepRaw: (file: NewTestFile<Source>) => Promise<Outcome<Raw>>;
  /** Takes a copy back that was made just now, unless anybody else relies on it. Never fails. */
  readonly takeBack: (raw: Raw) => Promise<void>;
}

export interface StoredKitchen {
  readonly file: string;
  readonly text: string;
  readonly kitchen: Kitchen;
}

/** The kitchen as it stands; fails with its mistakes. */
export const storedKitchen = async (
  store: Pick<KitchenStore<never>, "read">,
): Promise<Outcome<StoredKitchen>> => {
  const read = await store.read();
  if (!read.ok) return read;
  const { file, text } = read.value;
  const kitchen = parseKitchen(text, file);
  return kitchen.ok ? done({ file, text, kitchen: kitchen.value }) : kitchen;
};
