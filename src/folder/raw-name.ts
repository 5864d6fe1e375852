/** The name under which a logger's file is kept: as it came, but good on every system. */

/** Device names of Windows, with any ending; by its own rules for naming files. */
const devices = /^(?:con|prn|aux|nul|conin\$|conout\$|com[0-9¹²³]|lpt[0-9¹²³])(?:\.|$)/i;

const longestBytes = 180;
const longestEnding = 16;

const bytesOf = (text: string): number => new TextEncoder().encode(text).length;

export interface NameParts {
  readonly stem: string;
  /** With its dot; "" where there is none. */
  readonly ending: string;
}

export const splitName = (name: string): NameParts => {
  const dot = name.lastIndexOf(".");
  const has = dot > 0 && name.length - dot <= longestEnding;
  return has ? { stem: name.slice(0, dot), ending: name.slice(dot) } : { stem: name, ending: "" };
};

/** Whole letters and emoji are dropped from the end, never half of one. */
const shortened = (name: string): string => {
  const { stem, ending } = splitName(name);
  const room = longestBytes - bytesOf(ending);
  let kept = "";
  let bytes = 0;
  for (const { segment } of new Intl.Segmenter("en").segment(stem)) {
    bytes += bytesOf(segment);
    if (bytes > room) break;
    kept += segment;
  }
  return `${kept.trimEnd()}${ending}`;
};

/**
 * A file name that can be written on Linux, macOS and Windows. Letters of any
 * script, umlauts, emoji and spaces stay; path separators, control characters
 * and what Windows forbids become "-"; marks that turn the direction of writing
 * go, since they can hide an ending; leading dots, and dots and spaces at the
 * end, go; a device's name gets "file-" before it. At most 180 bytes.
 */
export const rawFileName = (name: string): string => {
  const clean = name
    .normalize("NFC")
    .replaceAll(/[\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069]/g, "")
    .replaceAll(/[\p{Cc}\p{Cs}\u2028\u2029/\\:*?"<>|]/gu, "-")
    .replace(/^[.\s]+/, "")
    .replace(/[.\s]+$/, "");
  const named = clean === "" ? "readings" : clean;
  return shortened(devices.test(named) ? `file-${named}` : named);
};

/** "night.csv", 2 -> "night-2.csv" */
export const numberedName = (name: string, number: number): string => {
  const { stem, ending } = splitName(name);
  return number === 1 ? name : `${stem}-${number}${ending}`;
};
