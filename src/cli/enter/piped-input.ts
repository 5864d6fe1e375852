/** The whole text that comes through a pipe. */
import { done, failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import { systemReason } from "../../folder/system-reason.ts";

/** Nobody types more than this by hand, bytes. */
const most = 2_000_000;

const decoded = (bytes: Uint8Array): string => {
  const isUtf16 = bytes[0] === 0xff && bytes[1] === 0xfe;
  return new TextDecoder(isUtf16 ? "utf-16le" : "utf-8").decode(bytes);
};

/** UTF-8, or UTF-16 with its mark. Fails where the input breaks off, or is no typed text by its size. */
export const pipedText = async (chunks: AsyncIterable<Uint8Array>): Promise<Outcome<string>> => {
  const parts: Uint8Array[] = [];
  let size = 0;
  try {
    for await (const chunk of chunks) {
      parts.push(chunk);
      size += chunk.length;
      if (size > most) {
        const expected = "readings typed by hand";
        const advice = "Give a logger's file to add.";
        return failed("reading-unread", { line: null, expected, found: "over 2 MB", advice });
      }
    }
  } catch (error) {
    return failed("file-unreadable", { file: "standard input", why: systemReason(error) });
  }
  return done(decoded(Buffer.concat(parts)));
};
