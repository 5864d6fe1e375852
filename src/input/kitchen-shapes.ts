/** Options of every command over a kitchen. */
import { flag, words } from "./option-readers.ts";

export const kitchenShapes = { kitchen: words("a folder, such as my-kitchen"), json: flag };
