/** Issues of the schema as mistakes: what was expected, what was found, what may have been meant. */
import type * as z from "zod";
import { nearestName } from "../../nearest-name.ts";
import { foundInWords, printable } from "../fault.ts";
import type { DataPath, Mistake } from "../fault.ts";
import { isPlainMap } from "../text/plain-data.ts";
import type { PlainData } from "../text/plain-data.ts";

const at = (data: PlainData, path: DataPath): PlainData | undefined => {
  let value: PlainData | undefined = data;
  for (const part of path) {
    if (Array.isArray(value)) value = (value as readonly PlainData[])[Number(part)];
    else if (isPlainMap(value)) value = value[String(part)];
    // A list of one may be written without the list.
    else if (part !== 0) return undefined;
  }
  return value;
};

/** A key that is not known; `known` are those that are. */
export const unknownKey = (path: DataPath, known: readonly string[]): Mistake => {
  const key = String(path.at(-1) ?? "");
  return {
    path,
    at: "key",
    expected: `one of the keys ${known.join(", ")}`,
    found: `"${printable(key)}"`,
    example: "",
    suggestion: nearestName(key, known),
  };
};

type Issue = z.core.$ZodIssue;

const ofIssue = (issue: Issue, data: PlainData, base: DataPath): readonly Mistake[] => {
  const inside = issue.path as DataPath;
  const path = [...base, ...inside];
  if (issue.code === "unrecognized_keys") {
    const known = issue.message.split(" ");
    return issue.keys.map((key) => unknownKey([...path, key], known));
  }
  const said = (issue.code === "custom" ? issue.params : undefined) ?? {};
  const value = at(data, inside);
  const words = (said["words"] ?? []) as readonly string[];
  const nearest = typeof value === "string" ? nearestName(value, words) : "";
  return [
    {
      path,
      at: "value",
      expected: String(said["expected"] ?? issue.message),
      found: String(said["found"] ?? foundInWords(value)),
      example: String(said["example"] ?? ""),
      suggestion: String(said["suggestion"] ?? nearest),
    },
  ];
};

/** All mistakes of one piece of data that stands at `base` in the file. */
export const mistakesOf = (
  error: z.ZodError,
  data: PlainData,
  base: DataPath,
): readonly Mistake[] => error.issues.flatMap((issue) => ofIssue(issue, data, base));
