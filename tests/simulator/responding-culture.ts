/** Cultures to be kept: windows 2 to 4 degC wide around 30 to 45 degC, for 8 to 36 h. */
import type { Culture } from "../../src/culture/culture.ts";
import { cultureWith } from "../../src/culture/own-culture.ts";
import type { Random } from "./random.ts";
import type { RespondingControl } from "./responding-control.ts";

/** Three of them. Where settings are few, most lie near one of its levels: the rest would ask nothing. */
export const sampleRespondingCultures = (
  random: Random,
  response: RespondingControl,
): readonly Culture[] =>
  ["first", "second", "third"].map((id) => {
    const middle = windowMiddle(random, response);
    const width = random.uniform(2, 4);
    const [low, high] = [toTenth(middle - width / 2), toTenth(middle + width / 2)];
    const ceiling = high + random.choice([0, 0.5, 1, 2, 3, 4]);
    const made = cultureWith(null, { id, low, high, ceiling, hours: random.integer(8, 36) });
    if (made === null) throw new RangeError("a culture lacks a figure");
    return made;
  });

const toTenth = (celsius: number): number => Math.round(celsius * 10) / 10;

function windowMiddle(random: Random, { settings, level, control }: RespondingControl): number {
  const reachable = settings.map(level).filter((celsius) => celsius >= 29 && celsius <= 46);
  if (control.kind === "steps" || reachable.length === 0 || random.chance(0.3))
    return random.uniform(31, 44);
  return Math.min(45, Math.max(30, random.choice(reachable) + random.normal(-0.5, 1)));
}

/** The hours of the longest of some cultures. */
export const longestHours = (cultures: readonly Culture[]): number =>
  cultures.reduce((longest, { hours }) => Math.max(longest, hours), 0);
