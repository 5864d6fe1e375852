/** `culture`: lists the kitchen's cultures and the catalogue, takes one in, or changes its figures. */
import * as z from "zod";
import { cultures as catalogue } from "../../culture/catalogue.ts";
import type { Culture } from "../../culture/culture.ts";
import type { CultureEntry } from "../../kitchen/edits/entries.ts";
import { withCulture } from "../../kitchen/edits/with-culture.ts";
import type { Kitchen } from "../../kitchen/kitchen.ts";
import { nearestName } from "../../nearest-name.ts";
import { failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import type { CommandResult, Shell } from "../command-result.ts";
import { answered, commandRun } from "../command-run.ts";
import { temperature, words } from "../option-readers.ts";
import { holdHours } from "../option-shapes.ts";
import { cultureTable } from "./culture-table.ts";
import { editKitchen } from "./edit-kitchen.ts";
import { plainNumber } from "./plain-number.ts";
import { folderOf, kitchenShapes, openKitchen } from "./kitchen-folder.ts";

const shape = z.object({
  ...kitchenShapes,
  name: words("a name, such as My blend"),
  low: temperature,
  high: temperature,
  target: temperature,
  ceiling: temperature,
  hours: holdHours,
});
type CultureOptions = z.infer<typeof shape>;
/** Figures in the words they were typed in. */
const saidCulture = (options: CultureOptions): CultureEntry => {
  const { name, low, high, target, ceiling, hours } = options;
  return {
    ...(name === undefined ? {} : { name }),
    ...(low === undefined ? {} : { low: plainNumber(low.written) }),
    ...(high === undefined ? {} : { high: plainNumber(high.written) }),
    ...(target === undefined ? {} : { target: plainNumber(target.written) }),
    ...(ceiling === undefined ? {} : { ceiling: plainNumber(ceiling.written) }),
    ...(hours === undefined ? {} : { hours }),
  };
};

const needed = ["low", "high", "ceiling", "hours"] as const;

/** A culture of one's own has no figures to fall back on. */
const incomplete = (id: string, said: CultureEntry): Outcome<never> | null => {
  if (catalogue.some((one) => one.id === id)) return null;
  const missing = needed.filter((key) => said[key] === undefined);
  if (missing.length === 0) return null;
  if (missing.length === needed.length) {
    const known = catalogue.map((one) => one.id);
    const suggestion = nearestName(id, known);
    return failed("culture-unknown", { culture: id, suggestion, known: known.join(", ") });
  }
  return failed("option-missing", {
    option: `--${missing[0]}`,
    why: `${id} is not in the catalogue, so --low, --high, --ceiling and --hours are yours to give`,
  });
};

const titled = (title: string, lines: readonly string[]): readonly string[] => [
  title,
  ...lines,
  "",
];

const list = async (options: CultureOptions, shell: Shell): Promise<Outcome<CommandResult>> => {
  const opened = await openKitchen(folderOf(options));
  // The catalogue is worth a look before there is a kitchen.
  const unasked = !opened.ok && opened.problem.code === "kitchen-missing" && !options.kitchen;
  if (!opened.ok && !unasked) return opened;
  const kitchen = opened.ok ? opened.value.kitchen : null;
  const page = { ...shell, unit: kitchen?.shownUnit ?? "degC" } as const;
  const own = kitchen?.cultures ?? [];
  const lines = [
    ...(own.length === 0 ? [] : titled("In this kitchen:", cultureTable(own, page))),
    ...titled("In the catalogue:", cultureTable(catalogue, page)),
    '"holdband culture yoghurt" takes one into the kitchen.',
  ];
  return answered(options, shell, lines.join("\n"), { cultures: own, catalogue });
};

const find = ({ cultures }: Kitchen, id: string): Culture | undefined =>
  cultures.find((one) => one.id === id);

const put = async (
  id: string,
  options: CultureOptions,
  shell: Shell,
): Promise<Outcome<CommandResult>> => {
  const said = saidCulture(options);
  const edited = await editKitchen(folderOf(options), ({ text, file, kitchen }) => {
    const gap = find(kitchen, id) === undefined ? incomplete(id, said) : null;
    return gap ?? withCulture(text, file, id, said, { replace: true });
  });
  if (!edited.ok) return edited;
  const { before, after } = edited.value;
  const culture = find(after, id);
  if (culture === undefined) return failed("internal", { what: `culture ${id} was not kept` });
  const was = find(before, id);
  const changed = Object.keys(said).length > 0 ? "Changed; it is now:" : "It was here already:";
  const table = cultureTable([culture], { ...shell, unit: after.shownUnit });
  const lines = [was === undefined ? "Taken in:" : changed, ...table];
  return answered(options, shell, lines.join("\n"), { cultures: [culture] });
};

export const culture = commandRun(shape, [], async ([id], options, shell) => {
  if (id !== undefined) return put(id, options, shell);
  const said = Object.keys(saidCulture(options)).length > 0;
  if (!said) return list(options, shell);
  return failed("option-missing", { option: "the culture's name", why: "it goes by that" });
});
