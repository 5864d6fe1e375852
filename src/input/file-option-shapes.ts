/** Options that say what a logger's file leaves open, and where its probes sat. */
import * as z from "zod";
import { parseDuration } from "../quantity-text.ts";
import type { ReadingOptions } from "../readings/readings-file.ts";
import { probeRoles } from "../readings/series.ts";
import type { ProbeRole } from "../readings/series.ts";
import { once, oneOf, read, several, within } from "./option-readers.ts";

const probeRole = (text: string): readonly [string, ProbeRole] | null => {
  const at = text.lastIndexOf("=");
  const role = probeRoles.find((word) => word === text.slice(at + 1).toLowerCase());
  return at < 1 || role === undefined ? null : [text.slice(0, at), role];
};

export const fileShapes = {
  probe: several(
    read(
      "a column's name and where it sat, such as Jar=food, Basin=bath or Kitchen=room",
      probeRole,
    ),
  ),
  column: z.array(z.string()).default([]),
  unit: oneOf("C or F", {
    c: "degC",
    degc: "degC",
    "°c": "degC",
    f: "degF",
    degf: "degF",
    "°f": "degF",
  }),
  dateOrder: oneOf("day-first or month-first", {
    "day-first": "day-first",
    dmy: "day-first",
    "month-first": "month-first",
    mdy: "month-first",
  }),
  decimal: oneOf("comma or point", { comma: ",", ",": ",", point: ".", ".": "." }),
  interval: once(
    read("a time between two readings with its unit, such as 5s, 1min or 0:10:00", (text) =>
      within(0.001, 86_400)(parseDuration(text)),
    ),
  ),
};

const fileShape = z.object(fileShapes);

/** The same as the core understands it. */
export const readingOptionsOf = (options: z.infer<typeof fileShape>): ReadingOptions => ({
  ...(options.column.length > 0 ? { columns: options.column } : {}),
  ...(options.probe.length > 0 ? { roles: new Map(options.probe) } : {}),
  ...(options.unit === undefined ? {} : { unit: options.unit }),
  ...(options.dateOrder === undefined ? {} : { dateOrder: options.dateOrder }),
  ...(options.decimal === undefined ? {} : { decimal: options.decimal }),
  ...(options.interval === undefined ? {} : { intervalSeconds: options.interval }),
});
