import type { Kitchen } from "../../../kitchen/kitchen.ts";
import type { Entered, FieldGroup } from "../form/field-types.ts";
import { fileFields } from "../readings/file-fields.ts";
import { entryChoices } from "./choices.ts";
import { setUpFields } from "./set-up-fields.ts";

const started: FieldGroup = {
  title: "If the file has no clock, or a wrong one",
  folded: true,
  fields: [
    {
      kind: "text",
      key: "starts",
      label: "Day and time of the first reading",
      hint: "such as 2026-10-03 22:10; of several files one on each line: jar.csv=2026-10-03 22:10",
      many: "lines",
    },
  ],
};

/** What is asked of a new water test beside its readings. */
export const testFields =
  (kitchen: Kitchen, typed: boolean) =>
  (entered: Entered): readonly FieldGroup[] => [
    {
      title: "What was tested",
      fields: [
        ...setUpFields(kitchen, entered),
        {
          kind: "choice",
          key: "thermometer",
          label: "Which thermometer or logger measured",
          choices: entryChoices(kitchen.thermometers),
          none: "one that is not in the kitchen",
        },
        { kind: "text", key: "fill", label: "How much was in it", hint: "such as 2 L" },
        {
          kind: "text",
          key: "room",
          label: "Room temperatures while it ran",
          hint: "the lower first: 17..25 or 63F..77F",
        },
        { kind: "text", key: "notes", label: "Notes" },
      ],
    },
    ...fileFields(typed),
    ...(typed ? [] : [started]),
  ];
