/** Names that lead nowhere, and settings that a control does not have. */
import { nearestName } from "../../nearest-name.ts";
import { printable } from "../fault.ts";
import type { DataPath, Mistake } from "../fault.ts";
import type { Appliance } from "../kitchen.ts";
import { isSetting, readSetting } from "../setting.ts";
import { isPlainMap } from "../text/plain-data.ts";
import type { PlainData, PlainMap } from "../text/plain-data.ts";
import { inCatalogue } from "./culture-schema.ts";
import { idsIn, referencesIn, thingOf } from "./references.ts";
import type { NamedSection, Reference } from "./references.ts";

const few = (ids: readonly string[]): string => {
  const first = ids.slice(0, 8).map(printable).join(", ");
  return ids.length > 8 ? `${first}, ...` : first;
};

const unknownName = ({ to, id, path }: Reference, ids: readonly string[]): Mistake => {
  const suggestion = nearestName(id, ids);
  const listed = ids.length === 0 ? "none is there yet" : few(ids);
  const addable = to === "cultures" && suggestion === "" && inCatalogue(id) !== undefined;
  return {
    path,
    at: "value",
    expected: `${thingOf[to]} of this kitchen (${listed})`,
    found: `"${printable(id)}"`,
    example: addable ? `"- ${id}" under cultures` : "",
    suggestion,
  };
};

/** References in `data` to ids that are not in `sections`. */
export const questionReferences = (data: PlainMap, sections: PlainMap): readonly Mistake[] => {
  const known = new Map<NamedSection, readonly string[]>();
  const sets = new Map<NamedSection, ReadonlySet<string>>();
  for (const section of ["thermometers", "appliances", "containers", "cultures"] as const) {
    known.set(section, idsIn(sections, section));
    sets.set(section, new Set(known.get(section)));
  }
  return referencesIn(data)
    .filter(({ to, id }) => sets.get(to)?.has(id) !== true)
    .map((reference) => unknownName(reference, known.get(reference.to) ?? []));
};

/** The setting of one test or batch, questioned against its appliance's control. */
export const questionSetting = (
  appliance: Appliance,
  entry: PlainData,
  path: DataPath,
): Mistake | null => {
  const written = isPlainMap(entry) ? (entry["setting"] ?? null) : null;
  if (written !== null && typeof written !== "string") return null;
  const setting = readSetting(appliance.control, written);
  if (isSetting(setting)) return null;
  return {
    path: [...path, "setting"],
    at: "value",
    expected: `for ${printable(appliance.name)}: ${setting.expected}`,
    found: written === null ? "no setting" : `"${printable(written)}"`,
    example: "",
    suggestion: setting.suggestion,
  };
};
