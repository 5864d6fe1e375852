/** The kitchen's folder, as what a new water test is stored in. */
import { createHash } from "node:crypto";
import { kitchenPath } from "../../folder/kitchen-bytes.ts";
import { readKitchenText, updateKitchen } from "../../folder/kitchen-file.ts";
import { openLoggerFile } from "../../folder/logger-file.ts";
import { storeRawFile, storeRawText } from "../../folder/raw-files.ts";
import { removeRawFile } from "../../folder/remove-raw-file.ts";
import type { StoredRaw } from "../../folder/stored-raw.ts";
import type { KitchenStore, OpenedSource } from "../../input/water-test/kitchen-store.ts";
import type { TypedText } from "../../input/water-test/new-test.ts";
import { done } from "../../problem.ts";

/** A file somewhere on disk, or readings that were typed. */
export type FolderSource = { readonly path: string } | TypedText;

const typedSource = (name: string, text: string): OpenedSource => {
  const bytes = Buffer.from(text, "utf8");
  const chunks = async function* (): AsyncGenerator<Uint8Array> {
    yield bytes;
  };
  return {
    name,
    bytes: bytes.length,
    chunks: chunks(),
    sha256: () => createHash("sha256").update(bytes).digest("hex"),
    broken: () => null,
  };
};

export const folderStore = (folder: string): KitchenStore<FolderSource, StoredRaw> => ({
  read: async () => {
    const text = await readKitchenText(folder);
    return text.ok ? done({ file: kitchenPath(folder), text: text.value }) : text;
  },
  update: (edit) => updateKitchen(folder, edit),
  openSource: async ({ name, source }, onBytes) =>
    "path" in source ? openLoggerFile(source.path, onBytes) : done(typedSource(name, source.text)),
  keepRaw: ({ name, source }) =>
    "path" in source ? storeRawFile(folder, source.path) : storeRawText(folder, name, source.text),
  takeBack: async (raw) => {
    await removeRawFile(folder, raw);
  },
});
