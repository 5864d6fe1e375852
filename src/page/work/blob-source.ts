/** A chosen or kept file as a source of bytes: hashed first, then streamed. */
import type { HashedSource } from "../../analysis-types.ts";
import { done, failed } from "../../problem.ts";
import type { Outcome, Problem } from "../../problem.ts";
import { fileHash } from "./file-hash.ts";

export interface BlobSource extends HashedSource {
  readonly bytes: number;
  readonly broken: () => Problem | null;
}

const streamed = (
  content: Blob,
  name: string,
  sha256: string,
  onBytes: (count: number) => void,
) => {
  let problem: Problem | null = null;
  const chunks = async function* (): AsyncGenerator<Uint8Array> {
    const reader = content.stream().getReader();
    try {
      for (;;) {
        // oxlint-disable-next-line no-await-in-loop -- a stream comes piece by piece
        const { done: ended, value } = await reader.read();
        if (ended) return;
        onBytes(value.length);
        yield value;
      }
    } catch (error) {
      problem = failed("file-changed-meanwhile", { file: name }).problem;
      throw error;
    } finally {
      await reader.cancel().catch(() => undefined);
    }
  };
  return {
    name,
    bytes: content.size,
    chunks: chunks(),
    sha256: () => sha256,
    broken: () => problem,
  };
};

/**
 * Opens a file under the name that is shown. Fails with "file-empty", or with
 * "file-unreadable" where it is too large or the browser refuses it; reading
 * it can still break off (`broken` says why).
 */
export const openBlob = async (
  content: Blob,
  name: string,
  onBytes: (count: number) => void,
): Promise<Outcome<BlobSource>> => {
  if (content.size === 0) return failed("file-empty", { file: name });
  const hash = await fileHash(content, name);
  return hash.ok ? done(streamed(content, name, hash.value, onBytes)) : hash;
};
