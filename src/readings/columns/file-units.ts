import type { TemperatureUnit } from "../../quantity.ts";
import type { FileUnit } from "../readings-file.ts";
import { notice } from "../../notice.ts";
import type { Notice } from "../../notice.ts";
import type { Plan } from "./plan.ts";
import { done, failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import type { ReadRows } from "../rows/row-reader.ts";
import { unitFromValues } from "./unit-rule.ts";

/** The unit of each probe, and what the person should know about it. */
export interface Units {
  readonly units: readonly FileUnit[];
  readonly notices: readonly Notice[];
}

/** Written units; else what the person said; else the values (`unit-rule.ts`). */
export const settleUnits = (
  name: string,
  plan: Plan,
  rows: ReadRows,
  said: TemperatureUnit | undefined,
): Outcome<Units> => {
  const written = plan.probes.map(({ unit }) => unit);
  const clash =
    said === undefined ? -1 : written.findIndex((unit) => unit !== null && unit !== said);
  if (clash >= 0) {
    const heading = plan.probes[clash]?.heading ?? "";
    return failed("options-contradict", {
      first: `--unit ${said === "degF" ? "F" : "C"}`,
      second: heading === "" ? `the unit written in ${name}` : `the column "${heading}" of ${name}`,
      why: `the file says ${written[clash] ?? ""}`,
    });
  }
  const open = rows.probes.filter((_, at) => written[at] === null);
  if (open.length === 0 || said !== undefined)
    return done({ units: written.map((unit) => unit ?? said ?? "degC"), notices: [] });
  const finding = unitFromValues(open.map(({ values }) => values));
  if (finding.kind === "undecidable")
    return failed("unit-undecidable", { file: name, middle: finding.middle });
  const { unit, middle } = finding;
  const told = unit === "degF" ? [notice("unit-inferred", { unit, middle })] : [];
  return done({ units: written.map((own) => own ?? unit), notices: told });
};
