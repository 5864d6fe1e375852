/** Names of chosen files: without their folders, and each its own. */
import type { ChosenFile } from "../protocol.ts";

/** The last part of a path; browsers and zip files part them with "/" and, rarely, with a backslash. */
export const baseName = (path: string): string => path.split(/[/\\]/).at(-1) ?? path;

/** As they are shown; a second "night.csv" is "night.csv (2)". */
export const shownNames = (files: readonly ChosenFile[]): readonly string[] => {
  const seen = new Map<string, number>();
  return files.map(({ name }) => {
    const plain = baseName(name);
    const count = (seen.get(plain) ?? 0) + 1;
    seen.set(plain, count);
    return count === 1 ? plain : `${plain} (${count})`;
  });
};
