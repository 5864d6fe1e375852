/** Names of typed probes: they must read back as themselves. */
import { failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import { done } from "../../problem.ts";
import { withoutUnit } from "../columns/heading-unit.ts";
import { headingKind } from "../columns/headings.ts";
import { headingOf } from "./typed-csv.ts";

const longest = 40;

/** Whether a heading made of this name is read as this probe's temperature, in either unit. */
const readsBack = (name: string): boolean =>
  (["degC", "degF"] as const).every((unit) => {
    const heading = headingOf(name, unit);
    return headingKind(heading) === "temperature" && withoutUnit(heading) === name;
  });

const isPlain = (name: string): boolean =>
  name.length <= longest && /^[\p{L}\p{N}][^"\p{C}]*$/u.test(name) && !/\s{2}|\s$/u.test(name);

/**
 * The probes' names, checked: different from each other (in small letters as
 * well), one line, and none that a reader of the file would take for a limit,
 * a humidity or a setting. Fails with `option-invalid` of --probe.
 */
export const probeHeadings = (names: readonly string[]): Outcome<readonly string[]> => {
  const bad = names.find((name) => !isPlain(name) || !readsBack(name));
  const expected = "a short name of the probe's place, such as Jar, Bath or Kitchen";
  if (bad !== undefined)
    return failed("option-invalid", { option: "--probe", expected, found: bad });
  const small = names.map((name) => name.toLowerCase());
  const again = names.find((_, at) => small.indexOf(small[at]!) !== at);
  if (again === undefined) return done(names);
  return failed("option-invalid", {
    option: "--probe",
    expected: "each name once",
    found: `${again} twice`,
  });
};
