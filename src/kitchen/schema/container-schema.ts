/** A container as written, read into data. */
import type * as z from "zod";
import { containerStands } from "../kitchen.ts";
import type { Container } from "../kitchen.ts";
import { group, optional, required } from "./leaf.ts";
import { countWanted, nameWanted, oneOf, volumeWanted } from "./wanted.ts";
import { readName, readWord } from "./written-names.ts";
import { readCount, readDate, readVolume } from "./written-values.ts";

const changedWanted = {
  expected: "the day jars, lid or amount last changed, as year-month-day",
  example: "changed: 2026-05-01",
};

export const containerSchema = group({
  name: optional(nameWanted, readName),
  stands: required(oneOf(containerStands, "stands"), readWord(containerStands)),
  volume: optional(volumeWanted, readVolume),
  count: optional(countWanted, readCount),
  changed: optional(changedWanted, readDate),
});

export const asContainer = (
  id: string,
  { changed, ...entry }: z.output<typeof containerSchema>,
): Container => ({
  ...entry,
  changedOn: changed,
  id,
  name: entry.name ?? id,
});
