import { milkBodies, separations, sournesses, troubles } from "../../../kitchen/kitchen.ts";
import type { Kitchen } from "../../../kitchen/kitchen.ts";
import type { Entered, FieldGroup } from "../form/field-types.ts";
import { answers, entryChoices, same } from "./choices.ts";
import { setUpFields } from "./set-up-fields.ts";

const withUnknown = (words: readonly string[]) => same([...words, "unknown"]);

/** One batch: what, where, how it was made, how it came out. */
export const batchFields =
  (kitchen: Kitchen) =>
  (entered: Entered): readonly FieldGroup[] => [
    {
      title: null,
      fields: [
        {
          kind: "choice",
          key: "culture",
          label: "Culture",
          choices: entryChoices(kitchen.cultures),
          none: null,
        },
        ...setUpFields(kitchen, entered),
        { kind: "day", key: "date", label: "Day it was set, if not today" },
      ],
    },
    {
      title: "How it was made",
      fields: [
        {
          kind: "text",
          key: "generation",
          label: "Generation",
          hint: "1 with a fresh starter, 2 with some of that batch, and so on",
          numeric: true,
        },
        { kind: "text", key: "hours", label: "How long it was held", hint: "hours, such as 36" },
        {
          kind: "choice",
          key: "milk",
          label: "Milk",
          choices: withUnknown(milkBodies),
          none: "not said",
        },
        {
          kind: "choice",
          key: "heated",
          label: "Was the milk heated first?",
          choices: answers,
          none: "not said",
        },
        {
          kind: "text",
          key: "starter",
          label: "Starter, as a part of the whole",
          hint: "such as 5%",
        },
        {
          kind: "choice",
          key: "moved",
          label: "Moved or shaken while it set?",
          choices: answers,
          none: "not said",
        },
      ],
    },
    {
      title: "How it came out",
      fields: [
        {
          kind: "choice",
          key: "separated",
          label: "Did whey part from the curd?",
          choices: withUnknown(separations),
          none: "not said",
        },
        {
          kind: "choice",
          key: "sourness",
          label: "Sourness",
          choices: withUnknown(sournesses),
          none: "not said",
        },
        { kind: "several", key: "trouble", label: "Any of these?", choices: same(troubles) },
        { kind: "text", key: "notes", label: "Notes" },
      ],
    },
  ];
