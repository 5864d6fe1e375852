/** A logger's file of a water test as written, read into data. */
import * as z from "zod";
import { probeRoles } from "../../readings/series.ts";
import type { TestFile, TestProbe } from "../kitchen.ts";
import { entriesOf, isPlainMap } from "../text/plain-data.ts";
import type { PlainData } from "../text/plain-data.ts";
import { complain, group, listOf, optional, required } from "./leaf.ts";
import * as wanted from "./wanted.ts";
import { readHeading, readName, readPath, readSha256, readWord } from "./written-names.ts";
import { readClock, readInterval, readUnit } from "./written-values.ts";

const place = required(wanted.oneOf(probeRoles, "place"), readWord(probeRoles));
const probeGroup = group({
  place,
  thermometer: optional({ ...wanted.idWanted, expected: "a thermometer's name" }, readName),
});
/** "Jar: food" is short for "Jar: { place: food }". */
const probe = z.preprocess(
  (value) => (typeof value === "string" ? { place: value } : value),
  probeGroup,
);

const probesWanted = {
  expected: "the file's columns, each with its place",
  example: "Jar: { place: food, thermometer: stick }",
};

const readProbe = (name: string, data: PlainData, context: z.RefinementCtx): TestProbe | null => {
  if (readHeading(name) === null) complain(context, [name], wanted.headingWanted);
  const found = probe.safeParse(data);
  if (found.success) return { name, ...found.data };
  for (const issue of found.error.issues) {
    context.addIssue({ ...issue, path: [name, ...issue.path] } as Parameters<
      typeof context.addIssue
    >[0]);
  }
  return null;
};

const probes = z
  .unknown()
  .optional()
  .transform((value, context): readonly TestProbe[] => {
    const data = (value ?? null) as PlainData;
    if (data === null) return [];
    if (isPlainMap(data)) {
      return entriesOf(data).flatMap(([name, one]) => readProbe(name, one, context) ?? []);
    }
    complain(context, [], probesWanted);
    return z.NEVER;
  });

const decimals = { comma: ",", point: "." } as const;
const orders = ["day-first", "month-first"] as const;

export const fileSchema = group({
  file: required(wanted.pathWanted, readPath),
  sha256: required(wanted.shaWanted, readSha256),
  starts: optional(wanted.clockWanted, readClock),
  unit: optional(wanted.unitWanted, readUnit),
  "date-order": optional(wanted.oneOf(orders, "date-order"), readWord(orders)),
  decimal: optional(
    wanted.oneOf(["comma", "point"], "decimal"),
    readWord(["comma", "point"] as const),
  ),
  interval: optional(wanted.intervalWanted, readInterval),
  columns: listOf(required(wanted.headingWanted, readHeading)),
  probes,
}).transform((entry): TestFile => ({
  path: entry.file,
  sha256: entry.sha256,
  startsAt: entry.starts,
  unit: entry.unit,
  dateOrder: entry["date-order"],
  decimal: entry.decimal === null ? null : decimals[entry.decimal],
  intervalSeconds: entry.interval,
  columns: entry.columns,
  probes: entry.probes,
}));
