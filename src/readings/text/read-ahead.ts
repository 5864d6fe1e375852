import { guessEncoding } from "./encoding.ts";
import type { Encoding } from "./encoding.ts";
import type { ByteSource, ReadingOptions } from "../readings-file.ts";
import { done, failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import { createTextReader } from "./text-decoder.ts";

/** A file's text: its first part for deciding, then all of it in pieces. */
export interface OpenedText {
  readonly head: string;
  /** The whole text, the first part included; to be read once. */
  readonly pieces: AsyncIterable<string>;
  /** Right after the last piece. */
  encoding(): Encoding;
}

/** Bytes read ahead: several thousand rows. */
const aheadBytes = 128 * 1024;

const join = (chunks: readonly Uint8Array[], length: number): Uint8Array => {
  const joined = new Uint8Array(length);
  let at = 0;
  for (const chunk of chunks) {
    joined.set(chunk, at);
    at += chunk.length;
  }
  return joined;
};

/** The source's bytes: `aheadBytes` or more (all, where there are fewer) at once, then chunk by chunk. */
async function* headFirst(source: ByteSource, options: ReadingOptions): AsyncGenerator<Uint8Array> {
  let waiting: Uint8Array[] | null = [];
  let bytesRead = 0;
  for await (const chunk of source.chunks) {
    bytesRead += chunk.length;
    options.onProgress?.(bytesRead);
    if (waiting === null) yield chunk;
    else if (waiting.push(chunk) > 0 && bytesRead >= aheadBytes) {
      yield join(waiting, bytesRead);
      waiting = null;
    }
  }
  if (waiting !== null) yield join(waiting, bytesRead);
}

/**
 * Opens a byte source as text: finds the encoding from the first bytes and
 * reads about 128 KB ahead. `file-empty` where there is nothing but blanks in
 * them, `file-binary` where they are not text.
 */
export const openText = async (
  source: ByteSource,
  options: ReadingOptions,
): Promise<Outcome<OpenedText>> => {
  const bytes = headFirst(source, options);
  const ahead: Uint8Array = (await bytes.next()).value ?? new Uint8Array();
  if (ahead.length === 0) return failed("file-empty", { file: source.name });
  const guess = guessEncoding(ahead);
  if (guess.kind === "binary") return failed("file-binary", { file: source.name });
  const reader = createTextReader(guess);
  let head = reader.decode(ahead);
  const isWhole = ahead.length < aheadBytes;
  if (isWhole) head += reader.end();
  if (isWhole && head.trim() === "") return failed("file-empty", { file: source.name });
  const all = head;
  async function* pieces(): AsyncGenerator<string> {
    yield all;
    if (isWhole) return;
    for await (const chunk of bytes) yield reader.decode(chunk);
    yield reader.end();
  }
  // The last line read ahead may be cut off: it decides nothing.
  if (!isWhole) head = head.slice(0, Math.max(head.lastIndexOf("\n"), head.lastIndexOf("\r")) + 1);
  return done({ head, pieces: pieces(), encoding: reader.encoding });
};
