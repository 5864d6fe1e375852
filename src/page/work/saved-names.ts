/** What a file to save is called: after what it holds, in letters that every system takes. */
import { rawFileName, splitName } from "../../folder/raw-name.ts";
import type { Analysis } from "../../analysis.ts";
import { baseName } from "./chosen-names.ts";

/** "night.csv" -> "night.html"; of several files the first. */
export const nightName = ({ files: [file] }: Analysis, ending: ".html" | ".json"): string => {
  const name = rawFileName(baseName(file?.readings.name ?? ""));
  return `${splitName(name).stem}${ending}`;
};
