/** Every request by its name: what the worker can be asked. */
import type { Requests } from "../protocol.ts";
import { add } from "./requests/add.ts";
import { check } from "./requests/check.ts";
import { edit } from "./requests/edit.ts";
import { erase } from "./requests/erase.ts";
import { open } from "./requests/open.ts";
import { remove } from "./requests/remove.ts";
import { report } from "./requests/report.ts";
import { save } from "./requests/save.ts";
import { start } from "./requests/start.ts";
import type { Handler } from "./workroom.ts";

export const handlers: { readonly [Name in keyof Requests]: Handler<Name> } = {
  start,
  check,
  edit,
  remove,
  add,
  report,
  save,
  open,
  erase,
};
