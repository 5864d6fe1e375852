/** Which kitchen a command is about, and its parsed text. */
import { resolve } from "node:path";
import { kitchenPath } from "../../folder/kitchen-bytes.ts";
import { readKitchenText } from "../../folder/kitchen-file.ts";
import type { Kitchen } from "../../kitchen/kitchen.ts";
import { parseKitchen } from "../../kitchen/parse-kitchen.ts";
import { done } from "../../problem.ts";
import type { Outcome } from "../../problem.ts";

export interface OpenKitchen {
  readonly folder: string;
  /** Path of kitchen.yaml, for messages. */
  readonly file: string;
  readonly text: string;
  readonly kitchen: Kitchen;
}

/** Where --kitchen points, else where the command was given. */
export const folderOf = ({ kitchen }: { readonly kitchen?: string | undefined }): string =>
  resolve(kitchen ?? ".");

/** Reads and validates kitchen.yaml; fails where there is none, or with its mistakes. */
export const openKitchen = async (folder: string): Promise<Outcome<OpenKitchen>> => {
  const text = await readKitchenText(folder);
  if (!text.ok) return text;
  const file = kitchenPath(folder);
  const kitchen = parseKitchen(text.value, file);
  return kitchen.ok ? done({ folder, file, text: text.value, kitchen: kitchen.value }) : kitchen;
};
