import { expect, it } from "vitest";
import { freePath } from "../../../src/page/work/free-path.ts";

it("keeps a file's own name", () => {
  expect(freePath("Nacht mit Gläsern.csv", [])).toBe("readings/Nacht mit Gläsern.csv");
});

it("numbers a name that is taken, capitals and composition of accents aside", () => {
  const taken = ["readings/NIGHT.csv", "readings/night-2.csv", "readings/na\u0308chte.csv"];
  expect(freePath("night.csv", taken)).toBe("readings/night-3.csv");
  expect(freePath("n\u00e4chte.csv", taken)).toBe("readings/n\u00e4chte-2.csv");
});

it("never leaves the folder", () => {
  expect(freePath("../../kitchen.yaml", [])).toBe("readings/-..-kitchen.yaml");
  expect(freePath("con.csv", [])).toBe("readings/file-con.csv");
});
