import { applianceKinds } from "../../../kitchen/kitchen.ts";
import type { Entered, FieldGroup } from "../form/field-types.ts";
import { answers, same } from "./choices.ts";

/** The kinds of control, each with what one then has to say. */
const controls = [
  { value: "fixed", label: "nothing to set: on and off" },
  { value: "steps", label: "a temperature, in steps" },
  { value: "programs", label: "programs with names" },
  { value: "marks", label: "a dial with marks" },
] as const;

const controlFields = (control: unknown): FieldGroup["fields"] => {
  if (control === "steps") {
    return [
      {
        kind: "text",
        key: "steps",
        label: "From the lowest to the highest setting",
        hint: "such as 30..45, or 86F..113F",
      },
      {
        kind: "text",
        key: "step",
        label: "Size of one step",
        hint: "such as 0.5; 1 where nothing is said",
        numeric: true,
      },
    ];
  }
  if (control === "programs") {
    return [
      { kind: "text", key: "programs", label: "Its programs", hint: "such as warm, yoghurt" },
    ];
  }
  return control === "marks"
    ? [
        {
          kind: "text",
          key: "marks",
          label: "Its marks, in order",
          hint: "such as low, 1, 2, high",
        },
      ]
    : [];
};

/** What is asked of an appliance; the kind of control decides which of its fields are shown. */
export const applianceFields = (entered: Entered): readonly FieldGroup[] => [
  {
    title: null,
    fields: [
      { kind: "choice", key: "kind", label: "Kind", choices: same(applianceKinds), none: null },
      {
        kind: "choice",
        key: "thermostat",
        label: "Does it switch its heat by itself?",
        choices: answers,
        none: "not said",
      },
      {
        kind: "choice",
        key: "control",
        label: "What can be set on it?",
        choices: controls,
        none: null,
      },
      ...controlFields(entered["control"]),
      { kind: "day", key: "moved", label: "Last moved or repaired, if it was" },
    ],
  },
];
