/**
 * What a zip says of its files (APPNOTE.TXT 6.3.10, sections 4.3.7, 4.3.12 and
 * 4.3.16): names and sizes, before anything is unpacked. Zips over 4 GB are not read.
 */

export interface ZipEntry {
  readonly name: string;
  /** 0: as it is; 8: deflated. */
  readonly method: number;
  readonly locked: boolean;
  readonly crc: number;
  /** Packed, bytes. */
  readonly size: number;
  /** Unpacked, bytes, as the zip claims. */
  readonly originalSize: number;
  readonly packed: Uint8Array<ArrayBuffer>;
}

const endMark = 0x06054b50;
const endLength = 22;
const longestComment = 65_535;
const entryMark = 0x02014b50;
const entryLength = 46;
const fileMark = 0x04034b50;
const fileLength = 30;

/** Where the directory's end stands; -1 where there is none. */
const endAt = (view: DataView): number => {
  const last = view.byteLength - endLength;
  for (let at = last; at >= 0 && at >= last - longestComment; at -= 1) {
    if (view.getUint32(at, true) === endMark) return at;
  }
  return -1;
};

/** UTF-8 where it can be: not every program says that it wrote it. */
const nameOf = (bytes: Uint8Array): string => {
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder("windows-1252").decode(bytes);
  }
};

const packedAt = (view: DataView, at: number, size: number): Uint8Array<ArrayBuffer> | null => {
  if (view.getUint32(at, true) !== fileMark) return null;
  const begin = at + fileLength + view.getUint16(at + 26, true) + view.getUint16(at + 28, true);
  return new Uint8Array(view.buffer as ArrayBuffer, view.byteOffset + begin, size);
};

interface Found {
  readonly entry: ZipEntry;
  readonly next: number;
}

const entryAt = (view: DataView, at: number): Found | null => {
  if (view.getUint32(at, true) !== entryMark) return null;
  const nameLength = view.getUint16(at + 28, true);
  const size = view.getUint32(at + 20, true);
  const packed = packedAt(view, view.getUint32(at + 42, true), size);
  if (packed === null) return null;
  const name = new Uint8Array(view.buffer, view.byteOffset + at + entryLength, nameLength);
  const entry = {
    name: nameOf(name),
    method: view.getUint16(at + 10, true),
    locked: (view.getUint16(at + 8, true) & 1) === 1,
    crc: view.getUint32(at + 16, true),
    size,
    originalSize: view.getUint32(at + 24, true),
    packed,
  };
  const more = view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  return { entry, next: at + entryLength + nameLength + more };
};

/** In the zip's order; null where it is no zip, or is damaged. */
export const zipEntries = (bytes: Uint8Array<ArrayBuffer>): readonly ZipEntry[] | null => {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  try {
    const end = endAt(view);
    if (end < 0) return null;
    const entries: ZipEntry[] = [];
    let at = view.getUint32(end + 16, true);
    for (let count = view.getUint16(end + 10, true); count > 0; count -= 1) {
      const found = entryAt(view, at);
      if (found === null) return null;
      entries.push(found.entry);
      at = found.next;
    }
    return entries;
  } catch {
    // An address that points outside of the file.
    return null;
  }
};
