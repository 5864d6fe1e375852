import { describe, expect, it } from "vitest";
import type { FieldGroup } from "../../../../src/page/screen/form/field-types.ts";
import {
  changedValues,
  fieldsOf,
  formValues,
} from "../../../../src/page/screen/form/form-values.ts";

const groups: readonly FieldGroup[] = [
  {
    title: null,
    fields: [
      { kind: "text", key: "name", label: "Name" },
      { kind: "text", key: "ice", label: "Ice", many: "commas" },
      { kind: "text", key: "probe", label: "Probes", many: "lines" },
    ],
  },
  {
    title: "More",
    fields: [
      { kind: "choice", key: "kind", label: "Kind", choices: [], none: null },
      { kind: "several", key: "trouble", label: "Trouble", choices: [], joined: true },
      { kind: "several", key: "column", label: "Columns", choices: [] },
      { kind: "flag", key: "confirm", label: "Confirm" },
      { kind: "day", key: "date", label: "Day" },
    ],
  },
];

describe("formValues", () => {
  it("leaves out what was left empty", () => {
    const entered = { name: "  ", ice: "", kind: "", trouble: [], confirm: false, date: "" };
    expect(formValues(groups, entered)).toEqual({});
  });

  it("hands on what stands in the fields, as the command line's values", () => {
    const entered = {
      name: " Pen ",
      kind: "cooker",
      trouble: ["pink", "fuzzy"],
      column: ["A", "B"],
      confirm: true,
      date: "2026-02-14",
    };
    expect(formValues(groups, entered)).toEqual({
      name: ["Pen"],
      kind: ["cooker"],
      trouble: ["pink,fuzzy"],
      column: ["A", "B"],
      confirm: true,
      date: ["2026-02-14"],
    });
  });

  it.each([
    ["0.3 0.2 0.3", ["0.3", "0.2", "0.3"]],
    ["0.3, 0.2", ["0.3", "0.2"]],
    // A decimal comma stays where semicolons or spaces part the readings.
    ["0,3; 0,2", ["0,3", "0,2"]],
    ["0,3 0,2", ["0,3", "0,2"]],
    ["32.5F\n32.7F", ["32.5F", "32.7F"]],
  ])("reads %j as several readings", (ice, readings) => {
    expect(formValues(groups, { ice })).toEqual({ ice: readings });
  });

  it("keeps commas and spaces inside a line", () => {
    expect(formValues(groups, { probe: "Jar, left=food\n\nBasin=bath" })).toEqual({
      probe: ["Jar, left=food", "Basin=bath"],
    });
  });

  it("says nothing of fields that are not shown", () => {
    expect(formValues(groups.slice(1), { name: "Pen", kind: "cooker" })).toEqual({
      kind: ["cooker"],
    });
  });
});

describe("changedValues", () => {
  it("keeps what is new or differs", () => {
    const before = { name: ["Pen"], ice: ["0.3", "0.2"], kind: ["cooker"] };
    const values = { name: ["Pen"], ice: ["0.3", "0.1"], date: ["2026-02-14"] };
    expect(changedValues(values, before)).toEqual({ ice: ["0.3", "0.1"], date: ["2026-02-14"] });
  });
});

describe("fieldsOf", () => {
  it("gives all fields in their order", () => {
    expect(fieldsOf(groups).map(({ key }) => key)).toEqual([
      "name",
      "ice",
      "probe",
      "kind",
      "trouble",
      "column",
      "confirm",
      "date",
    ]);
  });
});
