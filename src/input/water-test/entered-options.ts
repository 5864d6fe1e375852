/** What is said of readings that are typed by hand. */
import * as z from "zod";
import { readDate } from "../../kitchen/schema/written-values.ts";
import { fileShapes } from "../file-option-shapes.ts";
import { kitchenShapes } from "../kitchen-shapes.ts";
import { once, read } from "../option-readers.ts";
import { testShapes } from "./test-options.ts";

const { appliance, setting, container, fill, room, notes, name, thermometer } = testShapes;

export const enteredShapes = {
  ...kitchenShapes,
  appliance,
  setting,
  container,
  fill,
  room,
  notes,
  name,
  thermometer,
  probe: fileShapes.probe,
  unit: fileShapes.unit,
  date: once(read("a day as year-month-day, such as 2026-10-03", readDate)),
};

export const enteredShape = z.object(enteredShapes);

export type EnteredOptions = z.infer<typeof enteredShape>;

/** Options that may be given again. */
export const enteredRepeatable = ["probe", "thermometer"] as const;
