import type { Culture } from "../../../culture/culture.ts";
import type { Kitchen } from "../../../kitchen/kitchen.ts";
import type { Entered, Field, FieldGroup } from "../form/field-types.ts";
import { entryChoices } from "../kitchen/choices.ts";
import { checkGroups } from "../kitchen/thermometer-fields.ts";
import { fileFields } from "../readings/file-fields.ts";

const window: readonly Field[] = [
  {
    kind: "text",
    key: "low",
    label: "Lowest temperature of its window",
    hint: "such as 36.5, 36.5C or 97.7F",
    numeric: true,
  },
  { kind: "text", key: "high", label: "Highest temperature of its window", numeric: true },
  { kind: "text", key: "ceiling", label: "Ceiling: never above", numeric: true },
  { kind: "text", key: "hours", label: "How long it stays in", hint: "such as 36 or 36h" },
];

const ownWindow = "own";

/** Either a culture that brings its figures, or a window typed in. */
const cultureFields = (catalogue: readonly Culture[], entered: Entered): readonly Field[] => [
  {
    kind: "choice",
    key: "culture",
    label: "Culture",
    choices: [...entryChoices(catalogue), { value: ownWindow, label: "a window of my own" }],
    none: null,
  },
  ...(entered["culture"] === ownWindow ? window : []),
];

const known = [
  { value: "accuracy", label: "only what its maker says" },
  { value: "checks", label: "I checked it in ice or boiling water" },
  { value: "correction", label: "its correction, from a certificate" },
] as const;

const thermometerFields: Readonly<Record<string, readonly Field[]>> = {
  accuracy: [
    {
      kind: "text",
      key: "thermometerAccuracy",
      label: "Good to plus or minus",
      hint: "such as 0.5 or 0.9F",
      numeric: true,
    },
  ],
  correction: [
    {
      kind: "text",
      key: "correction",
      label: "What to add to each reading",
      hint: "such as -0.4 or 0.7F",
    },
    {
      kind: "text",
      key: "correctionUncertainty",
      label: "Standard uncertainty of that",
      hint: "such as 0.1",
      numeric: true,
    },
  ],
};

const thermometerGroups = (kitchen: Kitchen, entered: Entered): readonly FieldGroup[] => {
  const how = entered["thermometerKnown"];
  const kept = entryChoices(kitchen.thermometers).map(({ value, label }) => ({
    value: `kitchen:${value}`,
    label: `${label}, as checked in my kitchen`,
  }));
  const choice: Field = {
    kind: "choice",
    key: "thermometerKnown",
    label: "What is known of the thermometer or logger",
    choices: [...kept, ...known],
    none: "nothing: one degree either way is assumed",
  };
  const fields = thermometerFields[typeof how === "string" ? how : ""] ?? [];
  const group: FieldGroup = { title: "The thermometer", fields: [choice, ...fields] };
  return how === "checks" ? [group, ...checkGroups(entered)] : [group];
};

const more: FieldGroup = {
  title: "More",
  folded: true,
  fields: [
    {
      kind: "text",
      key: "room",
      label: "Room temperatures a batch may meet",
      hint: "the lower first: 17..25 or 63F..77F",
    },
    {
      kind: "text",
      key: "runToRun",
      label: "Standard deviation from one run to the next",
      hint: "such as 0.2; 0.3 degC is assumed",
      numeric: true,
    },
    {
      kind: "text",
      key: "share",
      label: "Part of the hours that must lie inside",
      hint: "such as 95%",
    },
    { kind: "text", key: "confidence", label: "How sure “holds” must be", hint: "such as 95%" },
  ],
};

/** Everything that is asked of one night that belongs to no kitchen. */
export const nightFields =
  (kitchen: Kitchen, catalogue: readonly Culture[], typed: boolean) =>
  (entered: Entered): readonly FieldGroup[] => [
    { title: "The culture", fields: cultureFields(catalogue, entered) },
    ...thermometerGroups(kitchen, entered),
    ...fileFields(typed),
    more,
  ];

/** Choices that only decide which fields are shown are no options of the command. */
export const nightOptions = <Values extends Readonly<Record<string, unknown>>>(
  values: Values,
): Values => {
  const { culture, thermometerKnown, ...rest } = values as Record<string, unknown>;
  const own = Array.isArray(culture) && culture[0] === ownWindow;
  const how = Array.isArray(thermometerKnown) ? String(thermometerKnown[0]) : "";
  const kept = how.startsWith("kitchen:") ? { kitchenThermometer: [how.slice(8)] } : {};
  return {
    ...rest,
    ...(culture === undefined || own ? {} : { culture }),
    ...kept,
  } as unknown as Values;
};
