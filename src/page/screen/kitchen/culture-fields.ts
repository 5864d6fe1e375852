import type { FieldGroup } from "../form/field-types.ts";

/** The figures of a culture; one from the catalogue has them already, so there they are folded. */
export const cultureFields = (own: boolean): readonly FieldGroup[] => [
  {
    title: own ? "Its figures" : "Figures that differ from the catalogue’s",
    note: "Temperatures such as 38, 38C or 100.4F.",
    ...(own ? {} : { folded: true as const }),
    fields: [
      { kind: "text", key: "low", label: "Lowest temperature of its window", numeric: true },
      { kind: "text", key: "high", label: "Highest temperature of its window", numeric: true },
      { kind: "text", key: "target", label: "Target, if it has one", numeric: true },
      { kind: "text", key: "ceiling", label: "Ceiling: never above", numeric: true },
      { kind: "text", key: "hours", label: "How long it stays in", hint: "such as 36 or 36h" },
    ],
  },
];
