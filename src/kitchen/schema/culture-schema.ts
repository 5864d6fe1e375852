/** A culture as written: a name of the catalogue, an entry of it with own figures, or one's own. */
import * as z from "zod";
import { cultures as catalogue } from "../../culture/catalogue.ts";
import type { Culture } from "../../culture/culture.ts";
import { nearestName } from "../../nearest-name.ts";
import { celsius, hours } from "../../quantity.ts";
import { printable } from "../fault.ts";
import { complain, group, optional, required } from "./leaf.ts";
import { hoursWanted, idWanted, nameWanted, temperatureWanted } from "./wanted.ts";
import { readName } from "./written-names.ts";
import { readHours, readTemperature } from "./written-values.ts";

const temperature = optional(temperatureWanted, readTemperature);

const cultureGroup = group({
  id: required({ ...idWanted, expected: "the culture's name", example: "id: reuteri" }, readName),
  name: optional(nameWanted, readName),
  low: temperature,
  high: temperature,
  target: temperature,
  ceiling: temperature,
  hours: optional(hoursWanted, readHours),
});
type CultureGroup = z.output<typeof cultureGroup>;

export const inCatalogue = (id: string): Culture | undefined =>
  catalogue.find((one) => one.id === id);

const own = ["low", "high", "ceiling", "hours"] as const;
const ownExample = {
  low: "low: 30",
  high: "high: 33",
  ceiling: "ceiling: 40, the temperature it must never pass",
  hours: "hours: 20h",
};

const temperatures = (entry: CultureGroup, base: Culture | undefined) => {
  const low = entry.low ?? base?.low ?? 0;
  const high = entry.high ?? base?.high ?? 0;
  const target = entry.target ?? base?.target ?? (low + high) / 2;
  return { low, high, target, ceiling: entry.ceiling ?? base?.ceiling ?? high };
};

const questionOrder = (entry: CultureGroup, context: z.RefinementCtx): void => {
  const { low, high, target, ceiling } = temperatures(entry, inCatalogue(entry.id));
  const say = (key: string, expected: string, value: number): void =>
    complain(context, [key], { expected, found: `${value} degC`, example: "" });
  if (low >= high) say("low", `low below high (${high} degC)`, low);
  else if (target < low || target > high) {
    say("target", `a target from low to high (${low} to ${high} degC)`, target);
  }
  if (ceiling < high) say("ceiling", `a ceiling at or above high (${high} degC)`, ceiling);
};

/** A bare name, or one with no figure of its own, can only be the catalogue's. */
const questionName = (id: string, context: z.RefinementCtx): void =>
  complain(context, ["id"], {
    expected: `a culture of the catalogue, or with it ${own.join(", ")}`,
    found: `"${printable(id)}"`,
    example: "- reuteri",
    suggestion: nearestName(
      id,
      catalogue.map((one) => one.id),
    ),
  });

const question = (entry: CultureGroup, context: z.RefinementCtx): void => {
  const missing =
    inCatalogue(entry.id) === undefined ? own.filter((key) => entry[key] === null) : [];
  if (missing.length === own.length) return questionName(entry.id, context);
  for (const key of missing) {
    complain(context, [key], {
      expected: `${key} for a culture that is not in the catalogue`,
      example: ownExample[key],
    });
  }
  if (missing.length === 0) questionOrder(entry, context);
};

export const cultureSchema = z.preprocess(
  (value) => (typeof value === "string" ? { id: value } : value),
  cultureGroup.superRefine(question),
);

export const asCulture = (entry: CultureGroup): Culture => {
  const base = inCatalogue(entry.id);
  const { low, high, target, ceiling } = temperatures(entry, base);
  const figures = [entry.low, entry.high, entry.target, entry.ceiling, entry.hours];
  const changed = figures.some((figure) => figure !== null);
  return {
    id: entry.id,
    name: entry.name ?? base?.name ?? entry.id,
    low: celsius(low),
    high: celsius(high),
    target: celsius(target),
    ceiling: celsius(ceiling),
    hours: hours(entry.hours ?? base?.hours ?? 0),
    source: changed || base === undefined ? { kind: "own" } : base.source,
    growth: base?.growth ?? [],
  };
};
