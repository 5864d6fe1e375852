/** A culture as written: a name of the catalogue, an entry of it with own figures, or one's own. */
import * as z from "zod";
import { cultures as catalogue } from "../../culture/catalogue.ts";
import { warmestWindow } from "../../culture/culture.ts";
import type { Culture } from "../../culture/culture.ts";
import { cultureWith } from "../../culture/own-culture.ts";
import { nearestName } from "../../nearest-name.ts";
import { celsiusToFahrenheit } from "../../quantity.ts";
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

/** null only where `question` has complained of what is missing. */
const cultureOf = (entry: CultureGroup): Culture | null =>
  cultureWith(inCatalogue(entry.id) ?? null, entry);

const questionOrder = ({ low, high, target, ceiling }: Culture, context: z.RefinementCtx): void => {
  const say = (key: string, expected: string, value: number): void =>
    complain(context, [key], { expected, found: `${value} degC`, example: "" });
  if (low >= warmestWindow) {
    const expected = `a window below ${warmestWindow} degC (${celsiusToFahrenheit(warmestWindow)} degF; a number without a letter is degC)`;
    say("low", expected, low);
  }
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
  const culture = missing.length === 0 ? cultureOf(entry) : null;
  if (culture !== null) questionOrder(culture, context);
};

export const cultureSchema = z
  .preprocess(
    (value) => (typeof value === "string" ? { id: value } : value),
    cultureGroup.superRefine(question),
  )
  .transform((entry) => cultureOf(entry) ?? z.NEVER);
