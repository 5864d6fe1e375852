/** Every form against the command it fills in: what it asks is an option, what it offers is understood. */
import { describe, expect, it } from "vitest";
import type * as z from "zod";
import { cultures } from "../../../src/culture/catalogue.ts";
import { checkShape } from "../../../src/input/option-shapes.ts";
import { readOptions } from "../../../src/input/read-options.ts";
import { applianceShape } from "../../../src/input/kitchen/appliance-options.ts";
import { batchShape } from "../../../src/input/kitchen/batch-options.ts";
import { containerShape } from "../../../src/input/kitchen/container-options.ts";
import { cultureShape } from "../../../src/input/kitchen/culture-options.ts";
import { thermometerShape } from "../../../src/input/kitchen/thermometer-options.ts";
import { addShape } from "../../../src/input/water-test/add-options.ts";
import { enteredShape } from "../../../src/input/water-test/entered-options.ts";
import type { Entered, FieldGroup } from "../../../src/page/screen/form/field-types.ts";
import { fieldsOf } from "../../../src/page/screen/form/form-values.ts";
import { applianceFields } from "../../../src/page/screen/kitchen/appliance-fields.ts";
import { batchFields } from "../../../src/page/screen/kitchen/batch-fields.ts";
import { containerFields } from "../../../src/page/screen/kitchen/container-fields.ts";
import { cultureFields } from "../../../src/page/screen/kitchen/culture-fields.ts";
import { testFields } from "../../../src/page/screen/kitchen/test-fields.ts";
import { thermometerFields } from "../../../src/page/screen/kitchen/thermometer-fields.ts";
import { nightFields } from "../../../src/page/screen/night/night-fields.ts";
import { sampleKitchen } from "../../report/sample-kitchen.ts";

const { kitchen } = sampleKitchen();
const stepped = kitchen.appliances.find(({ control }) => control.kind === "steps");
const marked = kitchen.appliances.find(({ control }) => control.kind === "marks");

interface Case {
  readonly name: string;
  readonly groups: (entered: Entered) => readonly FieldGroup[];
  readonly shape: z.ZodObject;
  /** States of the form that show different fields. */
  readonly states: readonly Entered[];
  /** Fields that only decide which others are shown. */
  readonly own?: readonly string[];
}

const controls = ["fixed", "steps", "programs", "marks"].map((control) => ({ control }));
const known = ["", "accuracy", "checks", "correction"].map((thermometerKnown) => ({
  thermometerKnown,
  culture: "own",
}));

const cases: readonly Case[] = [
  { name: "appliance", groups: applianceFields, shape: applianceShape, states: controls },
  { name: "container", groups: containerFields, shape: containerShape, states: [{}] },
  { name: "culture", groups: () => cultureFields(true), shape: cultureShape, states: [{}] },
  {
    name: "thermometer",
    groups: thermometerFields,
    shape: thermometerShape,
    states: [{}, { pressure: "851 hPa" }],
  },
  {
    name: "batch",
    groups: batchFields(kitchen),
    shape: batchShape,
    states: [{}, { appliance: stepped?.id ?? "" }, { appliance: marked?.id ?? "" }],
  },
  { name: "water test", groups: testFields(kitchen, false), shape: addShape, states: [{}] },
  { name: "typed test", groups: testFields(kitchen, true), shape: enteredShape, states: [{}] },
  {
    name: "night",
    groups: nightFields(kitchen, cultures, false),
    shape: checkShape.extend(thermometerShape.shape),
    states: known,
    own: ["thermometerKnown"],
  },
];

describe.each(cases)("the form of $name", ({ groups, shape, states, own = [] }) => {
  const shown = states.map((state) => fieldsOf(groups(state)));

  it("asks only what its command takes, each thing once", () => {
    for (const fields of shown) {
      const keys = fields.map(({ key }) => key).filter((key) => !own.includes(key));
      expect(Object.keys(shape.shape)).toEqual(expect.arrayContaining(keys));
      expect(new Set(keys).size).toBe(keys.length);
    }
  });

  it("offers choices that its command understands", () => {
    for (const field of shown.flat()) {
      if (field.kind !== "choice" && field.kind !== "several") continue;
      // "steps" and the like only show further fields; a window of one's own is no culture.
      const values = field.choices.map(({ value }) => value);
      const real = values.filter((value) => field.key !== "control" || value === "fixed");
      for (const value of real) {
        if (own.includes(field.key)) continue;
        const read = readOptions(shape, { [field.key]: [value] });
        expect(read, `${field.key} ${value}`).toMatchObject({ ok: true });
      }
    }
  });
});
