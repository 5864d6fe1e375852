/** Readings that the kitchen has already: the same bytes are the same night, under whatever name. */
import type { Kitchen } from "../../kitchen/kitchen.ts";
import { failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";

const nameOf = (path: string): string => path.slice(path.lastIndexOf("/") + 1);

/** Fails with "file-known", or where two of the files are one; null where all are new. */
export const knownAlready = (
  { tests }: Pick<Kitchen, "tests">,
  files: readonly { readonly path: string; readonly sha256: string }[],
): Outcome<never> | null => {
  for (const [at, { path, sha256 }] of files.entries()) {
    for (const { id: test, files: listed } of tests) {
      const known = listed.find((one) => one.sha256 === sha256);
      if (known === undefined) continue;
      return failed("file-known", { file: nameOf(path), test, stored: known.path });
    }
    const twin = files.slice(0, at).find((other) => other.sha256 === sha256);
    if (twin === undefined) continue;
    const why = "they hold the same readings, byte for byte";
    const [first, second] = [nameOf(twin.path), nameOf(path)];
    return failed("options-contradict", { first, second, why });
  }
  return null;
};
