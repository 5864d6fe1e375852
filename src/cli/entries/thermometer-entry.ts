/** `thermometer` on the command line. */
import { groups } from "./command-entry.ts";
import type { CommandEntry, OptionEntry } from "./command-entry.ts";
import { kitchenOptions } from "./kitchen-options.ts";

const options: readonly OptionEntry[] = [
  ["In melting ice", "--ice <readings...>", "what it showed, one reading or several: 0.3 0.2 0.3"],
  ["In boiling water", "--boiling <readings...>", "what it showed: 95.2 95.3, or 203.5F"],
  ["In boiling water", "--altitude <height>", "where the water boiled: 1450m or 4760ft"],
  ["In boiling water", "--pressure <pressure>", 'the air\'s pressure: "851 hPa", "25.1 inHg"'],
  [
    "In boiling water",
    "--pressure-at <where>",
    "station (read on the spot) or sea-level (forecast)",
  ],
  ["Beside a better one", "--reference <temperature>", "what the reference thermometer showed"],
  ["Beside a better one", "--reads <readings...>", "what yours showed beside it"],
  ["Beside a better one", "--reference-uncertainty <u>", "standard uncertainty of the reference"],
  ["The thermometer", "--accuracy <a>", "good to +-A, as its maker says: 0.5 or 0.9F"],
  ["The thermometer", "--resolution <step>", "step of its display: 0.1"],
  ["The thermometer", "--name <text>", "what you call it"],
  ["The check", "--date <day>", "day of the check (default: today): 2026-02-14"],
  ["The check", "--confirm", "store a check that looks doubtful: you have looked again"],
  ["Good enough?", "--window <low..high>", "for this window: 36.5..39.5"],
  ["Good enough?", "--culture <id>", "for this culture; may be given again"],
  ...kitchenOptions,
];

export const thermometerEntry: CommandEntry = {
  name: "thermometer",
  group: groups.kitchen,
  description:
    "a thermometer's check in ice, in boiling water or beside a better one: its correction",
  arguments: [["[id]", "the thermometer's name in the kitchen; without one nothing is stored"]],
  needs: "a thermometer's name",
  options,
  example: `
Example:
  holdband thermometer pen --ice 0.3 0.2 0.3 --boiling 95.5 95.4 --altitude 1450m
  holdband thermometer pen --reference 40.0 --reads 40.4 40.3 --window 36.5..39.5
  holdband thermometer

Ice: crushed, with just enough water to fill the gaps, stirred, the tip in the middle.
Boiling: a rolling boil, the tip in the water and off the bottom of the pot.
A number without a letter is in degC.`,
  load: async () => (await import("../kitchen/thermometer.ts")).thermometer,
};
