/** A container as written, read into data. */
import type * as z from "zod";
import { containerStands } from "../kitchen.ts";
import type { Container } from "../kitchen.ts";
import { group, optional, required } from "./leaf.ts";
import { countWanted, nameWanted, oneOf, volumeWanted } from "./wanted.ts";
import { readName, readWord } from "./written-names.ts";
import { readCount, readVolume } from "./written-values.ts";

export const containerSchema = group({
  name: optional(nameWanted, readName),
  stands: required(oneOf(containerStands, "stands"), readWord(containerStands)),
  volume: optional(volumeWanted, readVolume),
  count: optional(countWanted, readCount),
});

export const asContainer = (id: string, entry: z.output<typeof containerSchema>): Container => ({
  ...entry,
  id,
  name: entry.name ?? id,
});
