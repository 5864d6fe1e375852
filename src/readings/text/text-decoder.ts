import type { Encoding, EncodingGuess } from "./encoding.ts";

/** Bytes in, text out, in pieces; `encoding` says what was used so far. */
export interface TextReader {
  decode(bytes: Uint8Array): string;
  /** What is left in the decoder when the file ends. */
  end(): string;
  encoding(): Encoding;
}

const knownReader = (encoding: Encoding, markLength: number): TextReader => {
  const decoder = new TextDecoder(encoding, { ignoreBOM: true });
  let skip = markLength;
  return {
    decode(bytes) {
      const used = bytes.subarray(Math.min(skip, bytes.length));
      skip -= bytes.length - used.length;
      return decoder.decode(used, { stream: true });
    },
    end: () => decoder.decode(),
    encoding: () => encoding,
  };
};

/** Bytes that become as many characters, none of them the replacement character, are ASCII. */
const wasAscii = (text: string, bytes: Uint8Array): boolean =>
  text.length === bytes.length && !text.includes("\ufffd");

/** True when the bytes are UTF-8, a last character cut off by the end of the piece included. */
const isUtf8 = (bytes: Uint8Array): boolean => {
  try {
    new TextDecoder("utf-8", { fatal: true }).decode(bytes, { stream: true });
    return true;
  } catch {
    return false;
  }
};

/**
 * Pure ASCII reads the same in UTF-8 and windows-1252, so the choice waits for
 * the first piece with a byte outside ASCII: UTF-8 where that piece is valid
 * UTF-8, else windows-1252 (a degree sign as the single byte 0xB0).
 */
const undecidedReader = (): TextReader => {
  const ascii = new TextDecoder("utf-8");
  let chosen: TextReader | null = null;
  return {
    decode(bytes) {
      const plain = chosen === null ? ascii.decode(bytes) : "";
      if (chosen === null && wasAscii(plain, bytes)) return plain;
      chosen ??= knownReader(isUtf8(bytes) ? "utf-8" : "windows-1252", 0);
      return chosen.decode(bytes);
    },
    end: () => chosen?.end() ?? "",
    encoding: () => chosen?.encoding() ?? "utf-8",
  };
};

/** The reader for a guess that is not `binary`. */
export const createTextReader = (guess: EncodingGuess): TextReader =>
  guess.kind === "known" ? knownReader(guess.encoding, guess.markLength) : undecidedReader();
