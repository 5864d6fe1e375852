/** A container into the kitchen, or what is said of it changed. */
import type { ContainerEntry } from "../../kitchen/edits/entries.ts";
import { withContainer } from "../../kitchen/edits/with-container.ts";
import { failed } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";
import { saidContainer } from "./container-options.ts";
import type { ContainerOptions } from "./container-options.ts";
import type { KitchenEdit } from "./edit-kitchen-text.ts";
import { sectionEdit } from "./section-edit.ts";

const incomplete = ({ stands }: ContainerEntry, id: string): Outcome<never> | null =>
  stands === undefined
    ? failed("option-missing", { option: "--stands", why: `${id} is new to this kitchen` })
    : null;

/** `words`: the container's id. A new one needs how it stands. */
export const containerEdit = (
  [id]: readonly string[],
  options: ContainerOptions,
  today: string,
): Outcome<KitchenEdit> =>
  sectionEdit({
    what: "container",
    id,
    said: saidContainer(options, today),
    entries: ({ containers }) => containers,
    incomplete,
    put: withContainer,
  });
