/** Sections of kitchen.yaml as one names them at the command line. */
import { failed, done } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";

const sections = {
  thermometer: "thermometers",
  appliance: "appliances",
  container: "containers",
  culture: "cultures",
  test: "tests",
} as const;

export type SectionName = (typeof sections)[keyof typeof sections];

/** One of a section, or the section itself. */
export const sectionOf = (typed: string): Outcome<SectionName> => {
  const word = typed.toLowerCase();
  const found = Object.entries(sections).find(([one, all]) => one === word || all === word);
  if (found !== undefined) return done(found[1]);
  const expected = Object.keys(sections).join(", ");
  return failed("option-invalid", { option: "the section", expected, found: typed });
};
