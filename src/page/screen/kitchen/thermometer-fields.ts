import type { Entered, Field, FieldGroup } from "../form/field-types.ts";

const ice: Field = {
  kind: "text",
  key: "ice",
  label: "What it showed in melting ice",
  hint: "one reading or several: 0.3 0.2 0.3",
  many: "commas",
};

const boiling: readonly Field[] = [
  {
    kind: "text",
    key: "boiling",
    label: "What it showed in boiling water",
    hint: "one reading or several: 95.2 95.3, or 203.5F",
    many: "commas",
  },
  {
    kind: "text",
    key: "altitude",
    label: "Height above sea level where it boiled",
    hint: "such as 1450m or 4760ft: water boils cooler higher up",
  },
  {
    kind: "text",
    key: "pressure",
    label: "The air’s pressure, if known",
    hint: "such as 851 hPa or 25.1 inHg; better than the height alone",
  },
];

const pressureAt: Field = {
  kind: "choice",
  key: "pressureAt",
  label: "That pressure is",
  choices: [
    { value: "station", label: "read on the spot" },
    { value: "sea-level", label: "from a forecast, for sea level" },
  ],
  none: null,
};

const reference: readonly Field[] = [
  {
    kind: "text",
    key: "reference",
    label: "What a better thermometer showed",
    hint: "both in the same well-stirred water",
    numeric: true,
  },
  {
    kind: "text",
    key: "reads",
    label: "What yours showed beside it",
    hint: "one reading or several: 38.4 38.5",
    many: "commas",
  },
  {
    kind: "text",
    key: "referenceUncertainty",
    label: "Standard uncertainty of the better one",
    hint: "such as 0.05",
    numeric: true,
  },
];

const confirm: Field = {
  kind: "flag",
  key: "confirm",
  label: "I have looked again, and the check stands as it is",
};

const said = (value: unknown): boolean => typeof value === "string" && value.trim() !== "";

/** Checks at ice, in boiling water and beside a better thermometer. */
export const checkGroups = (entered: Entered): readonly FieldGroup[] => [
  { title: "In melting ice", fields: [ice] },
  {
    title: "In boiling water",
    note: "Hot water and steam scald: keep hands and face away from the pot.",
    fields: [...boiling, ...(said(entered["pressure"]) ? [pressureAt] : [])],
  },
  { title: "Beside a better thermometer", folded: true, fields: reference },
];

/** A thermometer, what its maker says of it, and its newest check. */
export const thermometerFields = (entered: Entered): readonly FieldGroup[] => [
  {
    title: null,
    fields: [
      {
        kind: "text",
        key: "accuracy",
        label: "Good to plus or minus, as its maker says",
        hint: "such as 0.5 or 0.9F",
        numeric: true,
      },
      {
        kind: "text",
        key: "resolution",
        label: "Smallest step of its display",
        hint: "such as 0.1",
        numeric: true,
      },
    ],
  },
  ...checkGroups(entered),
  {
    title: null,
    fields: [{ kind: "day", key: "date", label: "Day of the check, if not today" }, confirm],
  },
];
