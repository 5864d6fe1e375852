/** `container`: lists containers, shows one, adds one or changes what is said of it. */
import * as z from "zod";
import type { ContainerEntry } from "../../kitchen/edits/entries.ts";
import { withContainer } from "../../kitchen/edits/with-container.ts";
import { containerStands } from "../../kitchen/kitchen.ts";
import type { Kitchen } from "../../kitchen/kitchen.ts";
import { readWord } from "../../kitchen/schema/written-names.ts";
import { readCount, readDate, readVolume } from "../../kitchen/schema/written-values.ts";
import { done, failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import { commandRun } from "../command-run.ts";
import { notToCome } from "../local-day.ts";
import { once, read, words } from "../option-readers.ts";
import { kitchenShapes } from "./kitchen-folder.ts";
import { containerList } from "./kitchen-lists.ts";
import { containerOf } from "./known-ids.ts";
import { sectionCommand } from "./section-command.ts";

const shape = z.object({
  ...kitchenShapes,
  stands: once(read(`one of ${containerStands.join(", ")}`, readWord(containerStands))),
  name: words("a name, such as Jars in water"),
  volume: once(read("the volume of one vessel, such as 0.5L or 250 mL", readVolume)),
  count: once(read("a whole number, such as 6", readCount)),
  changed: once(read("a day as year-month-day, such as 2026-05-01", readDate)),
});

const saidContainer = (options: z.infer<typeof shape>): ContainerEntry => {
  const { stands, name, volume, count, changed } = options;
  return {
    ...(stands === undefined ? {} : { stands }),
    ...(name === undefined ? {} : { name }),
    ...(volume === undefined ? {} : { volume: `${Math.round(volume * 1e6) / 1e6} L` }),
    ...(count === undefined ? {} : { count }),
    ...(changed === undefined ? {} : { changed }),
  };
};

const incomplete = ({ stands }: ContainerEntry, id: string): Outcome<never> | null =>
  stands === undefined
    ? failed("option-missing", { option: "--stands", why: `${id} is new to this kitchen` })
    : null;

export const container = commandRun(shape, [], async ([id], options, shell) => {
  const { changed } = options;
  const toCome = changed === undefined ? null : notToCome("--changed", changed, shell.now());
  return (
    toCome ??
    sectionCommand({
      what: "container",
      plural: "containers",
      folder: options,
      id,
      said: done(saidContainer(options)),
      entries: ({ containers }: Kitchen) => containers,
      find: containerOf,
      incomplete,
      put: withContainer,
      lines: (kitchen, containers, page) => containerList({ ...kitchen, containers }, page),
      shell,
    })
  );
});
