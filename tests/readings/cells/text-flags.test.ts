import { describe, expect, it } from "vitest";
import { isTextFlag } from "../../../src/readings/cells/text-flags.ts";

describe("isTextFlag", () => {
  it.each([
    "ERR",
    "Error 3",
    "---",
    "--.-",
    "N/A",
    "open",
    "OL",
    "-OL",
    "nan",
    "***",
    "no sensor",
    "Fehler",
    " null ",
  ])("%s is one", (cell) => {
    expect(isTextFlag(cell)).toBe(true);
  });
  it.each(["", "41.2", "4x.2", "lid lifted", "21:00", "-5"])("%s is none", (cell) => {
    expect(isTextFlag(cell)).toBe(false);
  });
});
