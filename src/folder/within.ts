/** Whether one absolute path lies below another, by their names alone. */
import { isAbsolute, relative, sep } from "node:path";

/** Both must be real paths (no links in them); the folder itself does not count as within it. */
export const isWithin = (folder: string, path: string): boolean => {
  const way = relative(folder, path);
  return way !== "" && way !== ".." && !way.startsWith(`..${sep}`) && !isAbsolute(way);
};
