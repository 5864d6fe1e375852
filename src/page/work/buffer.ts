/**
 * The little of Node's `Buffer` that csv-parse asks for, where there is no Node:
 * bytes that come from text and turn into text, UTF-8 both ways. The build puts
 * it in place of the global name.
 */
const encoder = new TextEncoder();
// As Node reads bytes: a byte order mark stays, what is no UTF-8 becomes U+FFFD.
const decoder = new TextDecoder("utf-8", { ignoreBOM: true });

/** Up to here bytes are joined one by one: a decoder takes longer to call than to read a cell. */
const short = 48;

/** Text of bytes that are all ASCII; null where one is not. */
const ascii = (bytes: Uint8Array, from: number, to: number): string | null => {
  let text = "";
  for (let at = from; at < to; at += 1) {
    const byte = bytes[at] ?? 0;
    if (byte > 127) return null;
    text += String.fromCharCode(byte);
  }
  return text;
};

const textOf = (bytes: Uint8Array, from: number, to: number): string =>
  (to - from <= short ? ascii(bytes, from, to) : null) ?? decoder.decode(bytes.subarray(from, to));

const copyInto = (bytes: Uint8Array): ByteText => {
  const made = new ByteText(bytes.length);
  made.set(bytes);
  return made;
};

class ByteText extends Uint8Array {
  /** A part that shares its bytes, as Node's does. */
  override slice(from?: number, to?: number): ByteText {
    return this.subarray(from, to) as ByteText;
  }

  /** As much as the target has room for, like Node's. */
  copy(target: Uint8Array, at = 0, from = 0, to = this.length): void {
    target.set(this.subarray(from, to).subarray(0, Math.max(0, target.length - at)), at);
  }

  equals(other: Uint8Array): boolean {
    return this.length === other.length && this.every((byte, at) => byte === other[at]);
  }

  override toString(_encoding?: string, from = 0, to = this.length): string {
    return textOf(this, from, to);
  }
}

const compare = (one: Uint8Array, other: Uint8Array): number => {
  const at = one.findIndex((byte, place) => byte !== other[place]);
  return at === -1 ? one.length - other.length : (one[at] ?? 0) - (other[at] ?? -1);
};

/** UTF-8 whatever encoding is named: no other reaches it. */
export const Buffer = {
  from: (value: string | ArrayLike<number>): ByteText =>
    copyInto(typeof value === "string" ? encoder.encode(value) : Uint8Array.from(value)),
  allocUnsafe: (length: number): ByteText => new ByteText(length),
  isBuffer: (value: unknown): value is ByteText => value instanceof ByteText,
  compare,
  concat: (parts: readonly Uint8Array[]): ByteText =>
    copyInto(Uint8Array.from(parts.flatMap((part) => [...part]))),
};
