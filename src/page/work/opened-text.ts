/** The text of a chosen kitchen.yaml. */
import { failed, done } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import type { ChosenFile } from "../protocol.ts";
import { bytesOf } from "./file-hash.ts";

/** As the command line has it. */
const largest = 5_000_000;

/** Without a byte order mark. Fails with "kitchen-too-large", "kitchen-not-utf8" or "file-unreadable". */
export const openedText = async ({ name, content }: ChosenFile): Promise<Outcome<string>> => {
  if (content.size > largest) {
    return failed("kitchen-too-large", { file: name, megabytes: Math.ceil(content.size / 1e6) });
  }
  const bytes = await bytesOf(content, name);
  if (!bytes.ok) return bytes;
  try {
    return done(new TextDecoder("utf-8", { fatal: true }).decode(bytes.value));
  } catch {
    return failed("kitchen-not-utf8", { file: name });
  }
};
