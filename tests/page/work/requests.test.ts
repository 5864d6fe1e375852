import { expect, it } from "vitest";
import type { RequestName } from "../../../src/page/protocol.ts";
import { handlers } from "../../../src/page/work/requests.ts";

// The protocol's own list, as a record so that the compiler misses one that is missing.
const names: Readonly<Record<RequestName, true>> = {
  start: true,
  check: true,
  edit: true,
  remove: true,
  add: true,
  report: true,
  save: true,
  open: true,
  erase: true,
};

it("answers every request of the protocol and no other", () => {
  expect(Object.keys(handlers).toSorted()).toEqual(Object.keys(names).toSorted());
});
