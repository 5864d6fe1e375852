/**
 * How the bytes of a logger's file stand for characters, found from its first
 * bytes: a byte order mark decides; without one UTF-16 shows by its zero bytes
 * (ASCII text has one in every pair), and a file that is not text at all by
 * control characters. UTF-8 against windows-1252 is left open until the first
 * byte outside ASCII (see `text-decoder.ts`).
 */
export type Encoding = "utf-8" | "utf-16le" | "utf-16be" | "windows-1252";
export type EncodingGuess =
  | { readonly kind: "known"; readonly encoding: Encoding; readonly markLength: number }
  | { readonly kind: "ascii-so-far" }
  | { readonly kind: "binary" };

const known = (encoding: Encoding, markLength: number): EncodingGuess => ({
  kind: "known",
  encoding,
  markLength,
});

const startsWith = (head: Uint8Array, bytes: readonly number[]): boolean =>
  head.length >= bytes.length && bytes.every((byte, at) => head[at] === byte);

/** First bytes of files people give by mistake: ZIP (spreadsheets), PDF, gzip, PNG, JPEG, old OLE. */
const signatures: readonly (readonly number[])[] = [
  [0x50, 0x4b, 0x03, 0x04],
  [0x25, 0x50, 0x44, 0x46, 0x2d],
  [0x1f, 0x8b],
  [0x89, 0x50, 0x4e, 0x47],
  [0xff, 0xd8, 0xff],
  [0xd0, 0xcf, 0x11, 0xe0],
];

const tab = 0x09;
const carriageReturn = 0x0d;
/** End-of-file mark of old systems, escape: seen in text now and then. */
const harmless = new Set([0x1a, 0x1b]);

const isControl = (byte: number): boolean =>
  (byte < 0x20 && !(byte >= tab && byte <= carriageReturn) && !harmless.has(byte)) || byte === 0x7f;

interface ByteCounts {
  readonly zerosEven: number;
  readonly zerosOdd: number;
  readonly controls: number;
}

const countBytes = (head: Uint8Array): ByteCounts => {
  let zerosEven = 0;
  let zerosOdd = 0;
  let controls = 0;
  for (let at = 0; at < head.length; at += 1) {
    const byte = head[at] ?? 0;
    if (byte !== 0) controls += isControl(byte) ? 1 : 0;
    else if (at % 2 === 0) zerosEven += 1;
    else zerosOdd += 1;
  }
  return { zerosEven, zerosOdd, controls };
};

/** Most characters of a logger's file are ASCII: at least this share of pairs has its zero byte. */
const pairShare = 0.7;
/** A logger that lost power may leave some zero bytes and stray controls in a text file. */
const zeroShare = 0.2;
const controlShare = 0.01;
/** So many bytes show the encoding. */
const enough = 65_536;

/**
 * The encoding of a file from its first bytes (any number of them; 4 kB and
 * more are judged well), or that it is not text.
 */
export const guessEncoding = (head: Uint8Array): EncodingGuess => {
  if (startsWith(head, [0xef, 0xbb, 0xbf])) return known("utf-8", 3);
  if (startsWith(head, [0xff, 0xfe])) return known("utf-16le", 2);
  if (startsWith(head, [0xfe, 0xff])) return known("utf-16be", 2);
  if (signatures.some((bytes) => startsWith(head, bytes))) return { kind: "binary" };
  const looked = head.subarray(0, enough);
  const { zerosEven, zerosOdd, controls } = countBytes(looked);
  const pairs = looked.length / 2;
  if (controls > controlShare * looked.length) return { kind: "binary" };
  if (zerosOdd > pairShare * pairs && zerosEven < 0.1 * pairs) return known("utf-16le", 0);
  if (zerosEven > pairShare * pairs && zerosOdd < 0.1 * pairs) return known("utf-16be", 0);
  if (zerosEven + zerosOdd > zeroShare * looked.length) return { kind: "binary" };
  return { kind: "ascii-so-far" };
};
