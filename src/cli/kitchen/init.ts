/** `init`: a kitchen folder to start with. */
import { relative, resolve } from "node:path";
import * as z from "zod";
import { createKitchen } from "../../folder/create-kitchen.ts";
import { kitchenName } from "../../folder/kitchen-bytes.ts";
import { startText } from "../../kitchen/start-text.ts";
import { answered, commandRun } from "../command-run.ts";
import { flag } from "../../input/option-readers.ts";
import { quoted } from "./shell-word.ts";

const steps: readonly (readonly [what: string, ...lines: readonly string[]])[] = [
  [
    "Check your thermometer in melting ice and boiling water:",
    "holdband thermometer pen --ice 0.3 0.2 0.3 --boiling 95.5 95.4 --altitude 1450m",
  ],
  [
    "Say what you have and which cultures you keep:",
    'holdband appliance box --kind "warming box" --marks low,1,2,high',
    'holdband container jars --stands "jars in water"',
    "holdband culture yoghurt",
  ],
  [
    "Test with water overnight, and bring in the logger's file, or type the readings:",
    "holdband add night.csv --appliance box --setting 1 --container jars --thermometer pen",
    "holdband enter",
  ],
  ["See which appliance holds which culture:", "holdband report"],
];

const nextSteps = (): readonly string[] =>
  steps.map(([what, ...lines], at) => {
    const indented = lines.map((line) => `     ${line}`);
    return `${at + 1}. ${what}\n${indented.join("\n")}`;
  });

const guide = (folder: string): string => {
  const here = relative(".", resolve(folder));
  const there = here === "" ? [] : ["Go there first:", `     cd ${quoted(folder)}`, ""];
  return [
    `A kitchen was started in ${folder}; ${kitchenName} in it is yours to edit.`,
    "",
    ...there,
    ...nextSteps(),
  ].join("\n");
};

export const init = commandRun(z.object({ json: flag }), [], async (words, options, shell) => {
  const folder = words[0] ?? ".";
  const created = await createKitchen(folder, startText());
  if (!created.ok) return created;
  return answered(options, shell, guide(folder), { kitchen: resolve(folder) });
});
