/** Water tests as written; their settings stay texts until the appliance is known. */
import { fileSchema } from "./file-schema.ts";
import { complain, group, listOf, optional, required } from "./leaf.ts";
import { idWanted, nameWanted, noteWanted, roomWanted } from "./wanted.ts";
import { readName, readNote } from "./written-names.ts";
import { readRoom } from "./written-values.ts";

export const idOf = (what: string, example: string) =>
  required({ ...idWanted, expected: what, example }, readName);

/** What tests and batches say of their set-up. */
export const setUp = {
  appliance: idOf("an appliance's name", "appliance: warm-cooker"),
  setting: optional({ expected: "what it was set to", example: "setting: 38" }, readName),
  container: idOf("a container's name", "container: jars-in-water"),
};

export const testSchema = group({
  ...setUp,
  fill: optional({ ...nameWanted, expected: "how much was in it", example: "fill: 3 L" }, readNote),
  room: optional(roomWanted, readRoom),
  notes: optional(noteWanted, readNote),
  files: listOf(fileSchema),
}).superRefine((test, context) => {
  if (test.files.length > 0) return;
  complain(context, ["files"], {
    expected: "at least one logger's file",
    example: "- file: readings/night.csv",
  });
});
