import { expect, it } from "vitest";
import { baseName, shownNames } from "../../../src/page/work/chosen-names.ts";

const file = (name: string) => ({ name, content: new Blob([]) });

it("is a path's last part, on any system", () => {
  expect(baseName("kitchen/readings/night.csv")).toBe("night.csv");
  expect(baseName("C:\\nights\\night.csv")).toBe("night.csv");
  expect(baseName("night.csv")).toBe("night.csv");
  expect(baseName("")).toBe("");
});

it("tells two files of one name apart", () => {
  const names = shownNames([file("a/night.csv"), file("b/night.csv"), file("other.csv")]);
  expect(names).toEqual(["night.csv", "night.csv (2)", "other.csv"]);
});
