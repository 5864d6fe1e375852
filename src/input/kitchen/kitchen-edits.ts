/** Every edit of the kitchen by its command's name, from options as they were typed. */
import type * as z from "zod";
import type { Outcome } from "../../problem.ts";
import { readTyped } from "../read-options.ts";
import type { TypedOptions } from "../typed-options.ts";
import { applianceEdit } from "./appliance-edit.ts";
import { applianceShape } from "./appliance-options.ts";
import { batchEdit } from "./batch-edit.ts";
import { batchRepeatable, batchShape } from "./batch-options.ts";
import { containerEdit } from "./container-edit.ts";
import { containerShape } from "./container-options.ts";
import { cultureEdit } from "./culture-edit.ts";
import { cultureShape } from "./culture-options.ts";
import type { SayQuestion } from "./doubts.ts";
import type { KitchenEdit } from "./edit-kitchen-text.ts";
import { removeEdit, removeShape } from "./remove-edit.ts";
import { renameEdit, renameShape } from "./rename-edit.ts";
import { thermometerEdit } from "./thermometer-edit.ts";
import { thermometerRepeatable, thermometerShape } from "./thermometer-options.ts";

/** `today`: ISO day. Fails where the options cannot be read or cannot stand together. */
export type TypedEdit = (
  words: readonly string[],
  typed: TypedOptions,
  today: string,
) => Outcome<KitchenEdit>;

export type EditName =
  "appliance" | "container" | "culture" | "thermometer" | "batch" | "rename" | "remove";

const typedEdit =
  <Options>(
    shape: z.ZodType<Options>,
    repeatable: readonly string[],
    edit: (words: readonly string[], options: Options, today: string) => Outcome<KitchenEdit>,
  ): TypedEdit =>
  (words, typed, today) => {
    const options = readTyped(shape, repeatable, typed);
    return options.ok ? edit(words, options.value, today) : options;
  };

/** `say` puts a doubt about a thermometer's check in words. */
export const kitchenEdits = (say: SayQuestion): Readonly<Record<EditName, TypedEdit>> => ({
  appliance: typedEdit(applianceShape, [], applianceEdit),
  container: typedEdit(containerShape, [], containerEdit),
  culture: typedEdit(cultureShape, [], cultureEdit),
  thermometer: typedEdit(thermometerShape, thermometerRepeatable, (words, options, today) =>
    thermometerEdit(words, options, today, say),
  ),
  batch: typedEdit(batchShape, batchRepeatable, batchEdit),
  rename: typedEdit(renameShape, [], renameEdit),
  remove: typedEdit(removeShape, [], removeEdit),
});
