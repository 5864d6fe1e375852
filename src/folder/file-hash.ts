/** SHA-256 of a file (FIPS 180-4), read in parts. */
import { createHash } from "node:crypto";
import { createReadStream } from "node:fs";

/** In hex; throws the system's error where the file cannot be read. */
export const fileHash = async (path: string): Promise<string> => {
  const hash = createHash("sha256");
  for await (const chunk of createReadStream(path, { highWaterMark: 1024 * 1024 })) {
    hash.update(chunk as Buffer);
  }
  return hash.digest("hex");
};
