/** Text to bytes in the encodings that loggers use. */
import type { Encoding } from "./dialect-types.ts";

export function encoded(text: string, encoding: Encoding): Uint8Array {
  switch (encoding) {
    case "utf-8":
      return Buffer.from(text, "utf8");
    case "utf-8 with mark":
      return Buffer.from(`\ufeff${text}`, "utf8");
    case "utf-16le":
      return Buffer.from(`\ufeff${text}`, "utf16le");
    case "utf-16be":
      return Buffer.from(`\ufeff${text}`, "utf16le").swap16();
    case "windows-1252":
      // The same as latin1 for every letter used here (none between 0x80 and 0x9f).
      return Buffer.from(text, "latin1");
  }
}
