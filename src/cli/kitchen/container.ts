/** `container`: lists containers, shows one, adds one or changes what is said of it. */
import { containerEdit } from "../../input/kitchen/container-edit.ts";
import { containerShape, saidContainer } from "../../input/kitchen/container-options.ts";
import { containerOf } from "../../input/known-ids.ts";
import { localDay } from "../../input/local-day.ts";
import type { Kitchen } from "../../kitchen/kitchen.ts";
import { commandRun } from "../command-run.ts";
import { containerList } from "./kitchen-lists.ts";
import { sectionCommand } from "./section-command.ts";

export const container = commandRun(containerShape, [], async (words, options, shell) => {
  const today = localDay(shell.now());
  return sectionCommand({
    what: "container",
    plural: "containers",
    folder: options,
    id: words[0],
    said: saidContainer(options, today),
    edit: containerEdit(words, options, today),
    entries: ({ containers }: Kitchen) => containers,
    find: containerOf,
    lines: (kitchen, containers, page) => containerList({ ...kitchen, containers }, page),
    shell,
  });
});
