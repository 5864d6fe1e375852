import type { Field, FieldGroup } from "../form/field-types.ts";

const probes: Field = {
  kind: "text",
  key: "probe",
  label: "Where each probe sat",
  hint: "one on each line, its name and food, bath or room: Jar=food",
  many: "lines",
};

const unit: Field = {
  kind: "choice",
  key: "unit",
  label: "Unit of the numbers",
  choices: [
    { value: "C", label: "degC" },
    { value: "F", label: "degF" },
  ],
  none: "as found",
};

const fileOnly: readonly Field[] = [
  {
    kind: "choice",
    key: "dateOrder",
    label: "Order of day and month",
    choices: [
      { value: "day-first", label: "day-first" },
      { value: "month-first", label: "month-first" },
    ],
    none: "as found",
  },
  {
    kind: "choice",
    key: "decimal",
    label: "Decimal mark",
    choices: [
      { value: "point", label: "point" },
      { value: "comma", label: "comma" },
    ],
    none: "as found",
  },
  {
    kind: "text",
    key: "interval",
    label: "Time between two readings",
    hint: "of a file without times: 5s, 1min",
  },
  {
    kind: "text",
    key: "column",
    label: "Only these columns are temperatures",
    hint: "one name on each line",
    many: "lines",
  },
];

const typedOnly: readonly Field[] = [
  { kind: "day", key: "date", label: "Day of the first reading" },
];

/** What readings leave open; for typed ones the day comes first. */
export const fileFields = (typed: boolean): readonly FieldGroup[] =>
  typed
    ? [{ title: "About the readings", fields: [...typedOnly, unit, probes] }]
    : [
        {
          title: "If the file leaves something open",
          folded: true,
          fields: [unit, ...fileOnly, probes],
        },
      ];
