import { containerStands } from "../../../kitchen/kitchen.ts";
import type { FieldGroup } from "../form/field-types.ts";
import { same } from "./choices.ts";

/** What is asked of a container. */
export const containerFields = (): readonly FieldGroup[] => [
  {
    title: null,
    fields: [
      {
        kind: "choice",
        key: "stands",
        label: "How the food stands",
        choices: same(containerStands),
        none: null,
      },
      {
        kind: "text",
        key: "volume",
        label: "Volume of one vessel",
        hint: "such as 0.5 L or 250 mL",
      },
      { kind: "text", key: "count", label: "How many of them", hint: "such as 6", numeric: true },
      { kind: "day", key: "changed", label: "Last changed, if it was: other jars, lid or amount" },
    ],
  },
];
