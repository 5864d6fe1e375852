/** The kitchen folder in one zip file, as the command line has it on disk. */
import { Zip, ZipDeflate } from "fflate";
import type { Kitchen } from "../../kitchen/kitchen.ts";
import type { RawFile } from "./keeper.ts";
import { kitchenFile } from "./memory-store.ts";

/**
 * The same for all files, so that the same kitchen gives the same bytes. Zip
 * files hold times of the clock on the wall; noon is that day in every zone.
 */
const anyDay = (): Date => new Date(1980, 0, 1, 12);

/** Logger files by their paths: listed ones where kitchen.yaml says, then others that were kept. */
const filesByPath = (
  { tests }: Pick<Kitchen, "tests">,
  raw: ReadonlyMap<string, RawFile>,
): ReadonlyMap<string, Blob> => {
  const files = new Map<string, Blob>();
  const put = (path: string, content: Blob | undefined): void => {
    if (content !== undefined && path !== kitchenFile && !files.has(path)) files.set(path, content);
  };
  for (const { files: listed } of tests) {
    for (const { path, sha256 } of listed) put(path, raw.get(sha256)?.content);
  }
  const inUse = new Set(files.values());
  for (const { path, content } of raw.values()) if (!inUse.has(content)) put(path, content);
  return new Map([...files].toSorted(([a], [b]) => (a < b ? -1 : 1)));
};

/** kitchen.yaml and readings/; what is missing is left out. */
export const kitchenZip = async (
  text: string,
  kitchen: Pick<Kitchen, "tests">,
  raw: ReadonlyMap<string, RawFile>,
): Promise<Blob> => {
  const parts: Uint8Array<ArrayBuffer>[] = [];
  const zip = new Zip((error, part) => {
    if (error !== null) throw error;
    parts.push(part as Uint8Array<ArrayBuffer>);
  });
  const put = (path: string, bytes: Uint8Array): void => {
    const entry = new ZipDeflate(path, { level: 6 });
    entry.mtime = anyDay();
    zip.add(entry);
    entry.push(bytes, true);
  };
  put(kitchenFile, new TextEncoder().encode(text));
  for (const [path, content] of filesByPath(kitchen, raw)) {
    // oxlint-disable-next-line no-await-in-loop -- one file in memory at a time
    put(path, new Uint8Array(await content.arrayBuffer()));
  }
  zip.end();
  return new Blob(parts, { type: "application/zip" });
};
