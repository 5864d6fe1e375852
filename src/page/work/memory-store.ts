/** The kitchen in the page's memory: its text, its logger files, and what of both the browser keeps. */
import type { KeptRaw, KitchenStore, OpenedSource } from "../../input/water-test/kitchen-store.ts";
import type { NewTestFile, TypedText } from "../../input/water-test/new-test.ts";
import { parseKitchen } from "../../kitchen/parse-kitchen.ts";
import type { TestFile } from "../../kitchen/kitchen.ts";
import { startText } from "../../kitchen/start-text.ts";
import { done, failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import { openBlob } from "./blob-source.ts";
import { bytesHash, bytesOf, fileHash } from "./file-hash.ts";
import { freePath } from "./free-path.ts";
import { editHeld } from "./held-text.ts";
import type { HeldText } from "./held-text.ts";
import type { Keeper, Kept, RawFile } from "./keeper.ts";
import { rawShelf } from "./raw-shelf.ts";
import type { RawShelf } from "./raw-shelf.ts";

/** What sentences call the kitchen's file. */
export const kitchenFile = "kitchen.yaml";

/** A chosen file, or the text of typed readings. */
export type PageSource = { readonly content: Blob } | TypedText;

export interface StoredRaw extends KeptRaw {
  /** It was not here before. */
  readonly isNew: boolean;
}

export interface MemoryStore extends KitchenStore<PageSource, StoredRaw> {
  /** Takes what was kept on the last visit; asked again it does nothing. */
  readonly start: () => Promise<void>;
  readonly text: () => string;
  /** Every logger's file that is here, by SHA-256; those of tests taken out as well. */
  readonly raw: () => ReadonlyMap<string, RawFile>;
  /** A listed file, if it is here and is what it was when it was listed. */
  readonly openListed: (
    file: TestFile,
    onBytes: (count: number) => void,
  ) => Promise<Outcome<OpenedSource>>;
  /** Files that the kitchen lists and that were missing. */
  readonly takeIn: (files: ReadonlyMap<string, RawFile>) => Promise<void>;
  /** Another kitchen in the place of this one. */
  readonly replace: (kitchen: Kept) => Promise<void>;
  /** Back to a fresh kitchen; gives why the browser still keeps something, or null. */
  readonly erase: () => Promise<string | null>;
  /** Why something here is not kept; null where all is. */
  readonly notKept: () => string | null;
  /** Whether it is a kitchen of the person's, and not a fresh one. */
  readonly started: () => boolean;
}

const shownDigits = 12;

const changed = ({ path, sha256 }: TestFile, found: string) =>
  failed("raw-file-changed", {
    file: path,
    expected: sha256.slice(0, shownDigits),
    found: found.slice(0, shownDigits),
  });

type NewFile = NewTestFile<PageSource>;

const contentOf = ({ source }: NewFile): Blob =>
  "text" in source ? new Blob([source.text]) : source.content;

const listedPaths = (text: string): readonly string[] => {
  const kitchen = parseKitchen(text, kitchenFile);
  if (!kitchen.ok) return [];
  return kitchen.value.tests.flatMap(({ files }) => files.map(({ path }) => path));
};

/** A copy of its own: the file that was chosen may change, or go, while the page is open. */
const keepRaw = async (
  shelf: RawShelf,
  text: string,
  file: NewFile,
): Promise<Outcome<StoredRaw>> => {
  const bytes = await bytesOf(contentOf(file), file.name);
  if (!bytes.ok) return bytes;
  const hash = await bytesHash(bytes.value, file.name);
  if (!hash.ok) return hash;
  const sha256 = hash.value;
  const known = shelf.all().get(sha256);
  if (known !== undefined) return done({ path: known.path, sha256, isNew: false });
  const taken = Array.from(shelf.all().values(), (one) => one.path);
  const path = freePath(file.name, [...listedPaths(text), ...taken]);
  await shelf.put(new Map([[sha256, { path, content: new Blob([bytes.value]) }]]));
  return done({ path, sha256, isNew: true });
};

/** What the browser gives back is looked at once before it is believed. */
const openListed = async (
  shelf: RawShelf,
  file: TestFile,
  onBytes: (count: number) => void,
): Promise<Outcome<OpenedSource>> => {
  const one = shelf.all().get(file.sha256);
  if (one === undefined) return failed("raw-file-missing", { file: file.path });
  const found = await fileHash(one.content, file.path);
  if (!found.ok) return found;
  if (found.value !== file.sha256) return changed(file, found.value);
  return openBlob(one.content, file.path, onBytes);
};

/** `keeper`: where it is kept between visits. */
export const memoryStore = (keeper: Keeper): MemoryStore => {
  const fresh = startText();
  const shelf = rawShelf(keeper);
  let held: HeldText = { text: fresh, kept: null, why: null };

  const load = async (): Promise<void> => {
    const loaded = await keeper.load();
    if (!loaded.ok) held = { ...held, why: loaded.why };
    if (!loaded.ok || loaded.value === null) return;
    const { text, raw } = loaded.value;
    held = { text, kept: text, why: null };
    shelf.load(raw);
  };

  let started: Promise<void> | null = null;
  const start = (): Promise<void> => (started ??= load());

  /** Logger files that another window has taken in, or that somebody emptied out of the browser's store. */
  const followRaw = async (found: string | null, before: string | null): Promise<void> => {
    if (found === before) return;
    if (found === null) return shelf.keep("all");
    const loaded = await keeper.load();
    if (loaded.ok && loaded.value !== null) shelf.load(loaded.value.raw);
  };

  const update = async (edit: (text: string) => Outcome<string>): Promise<Outcome<void>> => {
    await shelf.keep("unkept");
    const before = held.kept;
    const edited = await editHeld(held, edit, keeper, fresh);
    held = edited.held;
    await followRaw(edited.found, before);
    return edited.outcome.ok ? done(undefined) : edited.outcome;
  };

  return {
    start,
    text: () => held.text,
    raw: shelf.all,
    read: () => Promise.resolve(done({ file: kitchenFile, text: held.text })),
    update,
    openSource: (file, onBytes) => openBlob(contentOf(file), file.name, onBytes),
    keepRaw: (file) => keepRaw(shelf, held.text, file),
    takeBack: ({ sha256, isNew }) => (isNew ? shelf.drop(sha256) : Promise.resolve()),
    openListed: (file, onBytes) => openListed(shelf, file, onBytes),
    takeIn: shelf.put,
    replace: async (kitchen) => {
      const saved = await keeper.replace(kitchen);
      const { text } = kitchen;
      shelf.reset(kitchen.raw, saved.ok);
      held = saved.ok ? { text, kept: text, why: null } : { ...held, text, why: saved.why };
    },
    erase: async () => {
      const cleared = await keeper.clear();
      shelf.reset(new Map(), true);
      held = { text: fresh, kept: cleared.ok ? null : held.kept, why: null };
      return cleared.ok ? null : cleared.why;
    },
    notKept: () => held.why ?? shelf.why(),
    started: () => held.text !== fresh,
  };
};
