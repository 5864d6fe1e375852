/** A culture into the kitchen, from the catalogue or one's own, or its figures changed. */
import { cultures as catalogue } from "../../culture/catalogue.ts";
import type { CultureEntry } from "../../kitchen/edits/entries.ts";
import { withCulture } from "../../kitchen/edits/with-culture.ts";
import { nearestName } from "../../nearest-name.ts";
import { done, failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import { saidCulture } from "./culture-options.ts";
import type { CultureOptions } from "./culture-options.ts";
import type { KitchenEdit } from "./edit-kitchen-text.ts";
import { sectionEdit } from "./section-edit.ts";

const needed = ["low", "high", "ceiling", "hours"] as const;

/** A culture of one's own has no figures to fall back on. */
const incomplete = (said: CultureEntry, id: string): Outcome<never> | null => {
  if (catalogue.some((one) => one.id === id)) return null;
  const missing = needed.filter((key) => said[key] === undefined);
  if (missing.length === 0) return null;
  if (missing.length === needed.length) {
    const known = catalogue.map((one) => one.id);
    const suggestion = nearestName(id, known);
    return failed("culture-unknown", { culture: id, suggestion, known: known.join(", ") });
  }
  return failed("option-missing", {
    option: `--${missing[0]}`,
    why: `${id} is not in the catalogue, so --low, --high, --ceiling and --hours are yours to give`,
  });
};

/** `words`: the culture's id; one of the catalogue needs nothing else. */
export const cultureEdit = (
  [id]: readonly string[],
  options: CultureOptions,
): Outcome<KitchenEdit> =>
  sectionEdit({
    what: "culture",
    id,
    said: done(saidCulture(options)),
    entries: ({ cultures }) => cultures,
    incomplete,
    put: withCulture,
  });
